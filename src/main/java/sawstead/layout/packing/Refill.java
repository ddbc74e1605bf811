package sawstead.layout.packing;

import java.util.SplittableRandom;

/**
 * Puts the pieces that are out back in, one after another in a drawn order, each where a drawn
 * measure of fit likes it best; opens sheets only when a piece fits nowhere. Now and then a good
 * place is passed over, so that repeated refills differ.
 */
final class Refill {
  private static final int ORDERS = 6;

  /** Least waste, least and greatest gap beside the piece; the second served best in trials. */
  private static final int[] FITS = {0, 1, 1, 2};

  private final PackingProblem problem;
  private final SplittableRandom random;
  private final boolean[] touched;
  private final int[] order;
  private final long[] key;
  private final int[] kinds;
  private final int[] lengths;
  private final int[] widths;

  private long work;
  private int bestSheet;
  private Block bestGroup;
  private boolean bestTurned;
  private boolean bestBeyond;
  private long bestFit;

  Refill(PackingProblem problem, SplittableRandom random, boolean[] touched) {
    this.problem = problem;
    this.random = random;
    this.touched = touched;
    int n = problem.pieces().size();
    order = new int[n];
    key = new long[n];
    lengths = problem.pieces().stream().mapToInt(PieceKind::length).toArray();
    widths = problem.pieces().stream().mapToInt(PieceKind::width).toArray();
    kinds = new int[problem.sheets().size()];
  }

  /** Free rectangles looked at so far. */
  long work() {
    return work;
  }

  /** Refills within the goal. Sheets not yet marked as touched are copied before they change. */
  void refill(Load load, Goal goal) {
    int n = sortOut(load);
    int fit = FITS[random.nextInt(FITS.length)];
    for (int i = 0; i < n; i++) {
      int kind = order[i];
      while (load.out[kind] > 0 && place(load, goal, kind, fit)) {
        load.out[kind]--;
        load.outArea -= (long) lengths[kind] * widths[kind];
      }
    }
  }

  private int sortOut(Load load) {
    int rule = random.nextInt(ORDERS);
    int n = 0;
    for (int kind = 0; kind < lengths.length; kind++) {
      if (load.out[kind] > 0) {
        long k = keyOf(kind, rule);
        int at = n++;
        while (at > 0 && key[at - 1] < k) {
          key[at] = key[at - 1];
          order[at] = order[at - 1];
          at--;
        }
        key[at] = k;
        order[at] = kind;
      }
    }
    return n;
  }

  private long keyOf(int kind, int rule) {
    long l = lengths[kind];
    long w = widths[kind];
    return switch (rule) {
      case 0, 1 -> l * w;
      case 2 -> Math.max(l, w);
      case 3 -> l;
      case 4 -> w;
      default -> random.nextInt(1 << 30);
    };
  }

  private boolean place(Load load, Goal goal, int kind, int fit) {
    bestGroup = null;
    bestFit = Long.MAX_VALUE;
    int l = lengths[kind];
    int w = widths[kind];
    long area = (long) l * w;
    boolean turn = problem.pieces().get(kind).mayTurn();
    for (int i = 0; i < load.count; i++) {
      OpenSheet sheet = load.sheets[i];
      work++;
      if (sheet.largestPlace() >= area) {
        scan(sheet, i, l, w, false, fit);
        if (turn) {
          scan(sheet, i, w, l, true, fit);
        }
      }
    }
    if (bestGroup == null && !open(load, goal, kind)) {
      return false;
    }
    insert(load, kind);
    return true;
  }

  private void scan(OpenSheet sheet, int at, int l, int w, boolean turned, int fit) {
    work += sheet.groups.size();
    for (int g = 0; g < sheet.groups.size(); g++) {
      Block group = sheet.groups.get(g);
      int slack = group.slack;
      int along = group.alongLength ? l : w;
      if (along > slack) {
        continue;
      }
      int across = group.alongLength ? w : l;
      int cross = group.cross();
      boolean beyond = across > cross;
      if (beyond) {
        cross += group.beyond();
        if (across > cross) {
          continue;
        }
      }
      long value =
          switch (fit) {
            case 0 -> (long) slack * cross - (long) along * across;
            case 1 -> Math.min(slack - along, cross - across);
            default -> Math.max(slack - along, cross - across);
          };
      if (value < bestFit && random.nextInt(64) != 0) {
        bestFit = value;
        bestSheet = at;
        bestGroup = group;
        bestTurned = turned;
        bestBeyond = beyond;
      }
    }
  }

  private boolean open(Load load, Goal goal, int kind) {
    PieceKind piece = problem.pieces().get(kind);
    int n = 0;
    for (int s = 0; s < problem.sheets().size(); s++) {
      if (piece.fits(problem.sheets().get(s)) && goal.admits(load, s)) {
        kinds[n++] = s;
      }
    }
    if (n == 0) {
      return false;
    }
    int chosen = kinds[n == 1 ? 0 : random.nextInt(n)];
    SheetKind sheet = problem.sheets().get(chosen);
    bestSheet = load.open(OpenSheet.empty(chosen, sheet));
    touched[bestSheet] = true;
    bestGroup = load.sheets[bestSheet].root;
    bestBeyond = false;
    boolean upright = piece.length() <= sheet.length() && piece.width() <= sheet.width();
    boolean turned =
        piece.mayTurn() && piece.width() <= sheet.length() && piece.length() <= sheet.width();
    bestTurned = turned && (!upright || random.nextBoolean());
    return true;
  }

  private void insert(Load load, int kind) {
    OpenSheet sheet = load.sheets[bestSheet];
    if (!touched[bestSheet]) {
      sheet = own(load, bestSheet, sheet);
      bestGroup = bestGroup.twin;
    }
    int l = bestTurned ? widths[kind] : lengths[kind];
    int w = bestTurned ? lengths[kind] : widths[kind];
    Block piece = Block.piece(kind, bestTurned, l, w);
    if (bestBeyond) {
      sheet.insertAcross(bestGroup, piece);
      return;
    }
    boolean along = bestGroup.alongLength;
    long slack = bestGroup.slack;
    long cross = bestGroup.cross();
    boolean keepAcross =
        (slack - piece.extent(along)) * cross >= slack * (cross - piece.extent(!along));
    if (random.nextInt(8) == 0) {
      keepAcross = !keepAcross;
    }
    sheet.insert(bestGroup, piece, keepAcross);
  }

  private OpenSheet own(Load load, int at, OpenSheet sheet) {
    OpenSheet copy = sheet.copy();
    load.sheets[at] = copy;
    touched[at] = true;
    work += 16 * (copy.groups.size() + copy.pieces.size());
    return copy;
  }
}
