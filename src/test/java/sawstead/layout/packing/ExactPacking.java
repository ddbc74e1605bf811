package sawstead.layout.packing;

import java.util.HashMap;
import java.util.Map;

/**
 * The slow, obvious rival: the least number of sheets for a handful of pieces, by trying every cut
 * at every whole step and every way to share the pieces out between its two sides.
 */
final class ExactPacking {
  private final int[] lengths;
  private final int[] widths;
  private final boolean[] mayTurn;
  private final Map<Long, Boolean> known = new HashMap<>();

  private ExactPacking(PackingProblem problem) {
    int n = problem.pieces().stream().mapToInt(PieceKind::demand).sum();
    lengths = new int[n];
    widths = new int[n];
    mayTurn = new boolean[n];
    int i = 0;
    for (PieceKind piece : problem.pieces()) {
      for (int copy = 0; copy < piece.demand(); copy++) {
        lengths[i] = piece.length();
        widths[i] = piece.width();
        mayTurn[i++] = piece.mayTurn();
      }
    }
  }

  /** Least number of sheets of the problem's first kind. */
  static int sheets(PackingProblem problem) {
    ExactPacking exact = new ExactPacking(problem);
    SheetKind sheet = problem.sheets().get(0);
    int all = (1 << exact.lengths.length) - 1;
    int[] least = new int[all + 1];
    for (int set = 1; set <= all; set++) {
      least[set] = Integer.MAX_VALUE;
      for (int part = set; part > 0; part = (part - 1) & set) {
        if (least[set ^ part] + 1 < least[set] && exact.fits(part, sheet.length(), sheet.width())) {
          least[set] = least[set ^ part] + 1;
        }
      }
    }
    return least[all];
  }

  private boolean fits(int set, int length, int width) {
    if (set == 0) {
      return true;
    }
    long area = 0;
    for (int i = 0; i < lengths.length; i++) {
      area += (set >> i & 1) == 0 ? 0 : (long) lengths[i] * widths[i];
    }
    if (area > (long) length * width) {
      return false;
    }
    if (Integer.bitCount(set) == 1) {
      int i = Integer.numberOfTrailingZeros(set);
      return (lengths[i] <= length && widths[i] <= width)
          || (mayTurn[i] && widths[i] <= length && lengths[i] <= width);
    }
    long key = ((long) set << 40) | ((long) length << 20) | width;
    Boolean answer = known.get(key);
    if (answer == null) {
      answer = splits(set, length, width);
      known.put(key, answer);
    }
    return answer;
  }

  private boolean splits(int set, int length, int width) {
    for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      for (int x = 1; x < length; x++) {
        if (fits(part, x, width) && fits(set ^ part, length - x, width)) {
          return true;
        }
      }
      for (int y = 1; y < width; y++) {
        if (fits(part, length, y) && fits(set ^ part, length, width - y)) {
          return true;
        }
      }
    }
    return false;
  }
}
