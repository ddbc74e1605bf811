package sawstead.layout.packing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A proven lower bound on the number of counted sheets: no packing, guillotine or not, uses fewer.
 *
 * <p>The greatest of three: total area; pairs of dual feasible functions, one for each direction,
 * where a piece that may turn counts with the smaller of its two values, or on square sheets with
 * their mean; and a set of pieces of which no two fit one sheet. Sheets of several sizes are taken
 * as copies of the smallest rectangle that holds them all, and each uncounted sheet as one such
 * copy given free (in the area bound, with its real area). Certified up to rounding: sums in double
 * are lowered by 1e-9 before they are rounded up.
 */
public final class LowerBound {
  private static final double ROUNDING = 1e-9;

  private final PackingProblem problem;
  private final List<PieceKind> pieces;
  private final int length;
  private final int width;
  private final long free;

  private LowerBound(PackingProblem problem) {
    this.problem = problem;
    this.pieces = problem.pieces();
    this.length = problem.sheets().stream().mapToInt(SheetKind::length).max().orElseThrow();
    this.width = problem.sheets().stream().mapToInt(SheetKind::width).max().orElseThrow();
    this.free =
        problem.sheets().stream().filter(s -> !s.counted()).mapToLong(SheetKind::supply).sum();
  }

  /** Least number of counted sheets that any packing needs, at least 0. */
  public static int of(PackingProblem problem) {
    LowerBound bound = new LowerBound(problem);
    long best = Math.max(bound.area(), bound.clique() - bound.free);
    return (int) Math.max(0, Math.max(best, bound.dual() - bound.free));
  }

  private long area() {
    double left = problem.pieceArea();
    long largest = 0;
    for (SheetKind sheet : problem.sheets()) {
      if (sheet.counted()) {
        largest = Math.max(largest, sheet.area());
      } else {
        left -= (double) sheet.area() * sheet.supply();
      }
    }
    if (left <= 0) {
      return 0;
    }
    return largest == 0 ? 0 : up(left / largest);
  }

  private long dual() {
    double[][] alongUp = values(length, PieceKind::length, PieceKind::width);
    double[][] alongTurned = turnedValues(length);
    double[][] acrossUp = values(width, PieceKind::width, PieceKind::length);
    double[][] acrossTurned = turnedAcross();
    double best = 0;
    for (int f = 0; f < alongUp.length; f++) {
      for (int g = 0; g < acrossUp.length; g++) {
        best = Math.max(best, sum(alongUp[f], acrossUp[g], alongTurned[f], acrossTurned[g]));
      }
    }
    return up(best);
  }

  /**
   * The greater of two valid sums. One takes the smaller value for a piece that may turn. The other
   * holds on square sheets only, where both (f, g) and (g, f) bound every packing by 1, and so does
   * their mean, whichever way each piece lies.
   */
  private double sum(double[] fLength, double[] gWidth, double[] fWidth, double[] gLength) {
    double least = 0;
    double mean = 0;
    for (int i = 0; i < fLength.length; i++) {
      PieceKind piece = pieces.get(i);
      double upright = fLength[i] * gWidth[i];
      double turned = fWidth[i] * gLength[i];
      mean += piece.demand() * (upright + turned) / 2;
      least += piece.demand() * least(piece, upright, turned);
    }
    return length == width ? Math.max(least, mean) : least;
  }

  private double least(PieceKind piece, double upright, double turned) {
    boolean fitsUpright = piece.length() <= length && piece.width() <= width;
    boolean fitsTurned = piece.mayTurn() && piece.width() <= length && piece.length() <= width;
    if (fitsUpright && fitsTurned) {
      return Math.min(upright, turned);
    }
    return fitsUpright ? upright : turned;
  }

  private interface Extent {
    int of(PieceKind piece);
  }

  private double[][] values(int capacity, Extent main, Extent other) {
    return table(family(capacity, main, other), capacity, main);
  }

  private double[][] turnedValues(int capacity) {
    return table(family(capacity, PieceKind::length, PieceKind::width), capacity, PieceKind::width);
  }

  private double[][] turnedAcross() {
    return table(family(width, PieceKind::width, PieceKind::length), width, PieceKind::length);
  }

  private List<DualFeasible> family(int capacity, Extent main, Extent other) {
    int[] extents = new int[2 * pieces.size()];
    for (int i = 0; i < pieces.size(); i++) {
      PieceKind piece = pieces.get(i);
      extents[2 * i] = main.of(piece);
      extents[2 * i + 1] = piece.mayTurn() ? other.of(piece) : main.of(piece);
    }
    return DualFeasible.family(capacity, extents);
  }

  private double[][] table(List<DualFeasible> family, int capacity, Extent extent) {
    double[][] table = new double[family.size()][pieces.size()];
    for (int f = 0; f < table.length; f++) {
      for (int i = 0; i < pieces.size(); i++) {
        int x = extent.of(pieces.get(i));
        table[f][i] = x <= capacity ? family.get(f).value(x) : 0;
      }
    }
    return table;
  }

  /** Copies of which no two fit one sheet, gathered greedily from each large piece in turn. */
  private long clique() {
    Integer[] order = new Integer[pieces.size()];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingLong(i -> -pieces.get(i).area()));
    long best = 1;
    for (int start = 0; start < Math.min(order.length, 20); start++) {
      best = Math.max(best, cliqueFrom(order, start));
    }
    return best;
  }

  private long cliqueFrom(Integer[] order, int start) {
    long copies = 0;
    int[] chosen = new int[order.length];
    int n = 0;
    for (int step = 0; step < order.length; step++) {
      int candidate = order[(start + step) % order.length];
      boolean all = true;
      for (int i = 0; i < n && all; i++) {
        all = !together(pieces.get(candidate), pieces.get(chosen[i]));
      }
      if (!all) {
        continue;
      }
      boolean alone = together(pieces.get(candidate), pieces.get(candidate));
      copies += alone ? 1 : pieces.get(candidate).demand();
      chosen[n++] = candidate;
    }
    return copies;
  }

  /** Whether the two fit one sheet side by side in some way. */
  private boolean together(PieceKind a, PieceKind b) {
    for (int turn = 0; turn < 4; turn++) {
      boolean turnA = (turn & 1) != 0;
      boolean turnB = (turn & 2) != 0;
      if ((turnA && !a.mayTurn()) || (turnB && !b.mayTurn())) {
        continue;
      }
      long aLength = turnA ? a.width() : a.length();
      long aWidth = turnA ? a.length() : a.width();
      long bLength = turnB ? b.width() : b.length();
      long bWidth = turnB ? b.length() : b.width();
      boolean alongLength = aLength + bLength <= length && Math.max(aWidth, bWidth) <= width;
      boolean alongWidth = aWidth + bWidth <= width && Math.max(aLength, bLength) <= length;
      if (alongLength || alongWidth) {
        return true;
      }
    }
    return false;
  }

  private static long up(double value) {
    return (long) Math.ceil(value * (1 - ROUNDING) - ROUNDING);
  }
}
