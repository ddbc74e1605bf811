package sawstead.layout.packing;

import java.util.Arrays;

/**
 * Sheets in work and the pieces that have found no place yet. Sheets are shared between copies and
 * copied before they are changed.
 */
final class Load {
  final PackingProblem problem;
  OpenSheet[] sheets;
  int count;

  /** Copies of each piece kind that are not placed. */
  final int[] out;

  long outArea;
  int counted;
  long price;

  private Load(PackingProblem problem, int capacity) {
    this.problem = problem;
    this.sheets = new OpenSheet[capacity];
    this.out = new int[problem.pieces().size()];
  }

  /** No sheet open, every piece still out. */
  static Load empty(PackingProblem problem) {
    Load load = new Load(problem, 8);
    for (int kind = 0; kind < load.out.length; kind++) {
      load.out[kind] = problem.pieces().get(kind).demand();
    }
    load.outArea = problem.pieceArea();
    return load;
  }

  boolean complete() {
    return outArea == 0;
  }

  /** Becomes equal to the other, sharing its sheets. */
  void copyFrom(Load other) {
    if (sheets.length < other.count) {
      sheets = new OpenSheet[other.sheets.length];
    }
    System.arraycopy(other.sheets, 0, sheets, 0, other.count);
    if (count > other.count) {
      Arrays.fill(sheets, other.count, count, null);
    }
    count = other.count;
    System.arraycopy(other.out, 0, out, 0, out.length);
    outArea = other.outArea;
    counted = other.counted;
    price = other.price;
  }

  Load copy() {
    Load copy = new Load(problem, Math.max(8, sheets.length));
    copy.copyFrom(this);
    return copy;
  }

  /** A copy that shares nothing. */
  Load deepCopy() {
    Load copy = copy();
    for (int i = 0; i < count; i++) {
      copy.sheets[i] = sheets[i].copy();
    }
    return copy;
  }

  /** This load without one sheet, for a problem whose first sheet kinds are those of this one. */
  Load without(int at, PackingProblem other) {
    Load load = new Load(other, Math.max(8, sheets.length));
    load.copyFrom(this);
    load.close(at);
    return load;
  }

  /** This load with the sheets of one kind replaced by sheets of a larger kind of the problem. */
  Load widened(PackingProblem other, int from, int to) {
    Load load = new Load(other, Math.max(8, sheets.length));
    load.copyFrom(this);
    for (int i = 0; i < count; i++) {
      OpenSheet sheet = sheets[i];
      load.sheets[i] = sheet.kind == from ? sheet.on(to, other.sheets().get(to)) : sheet;
    }
    return load;
  }

  /** The sheet with the largest free area. */
  int mostFree() {
    int most = 0;
    for (int i = 1; i < count; i++) {
      if (sheets[i].free > sheets[most].free) {
        most = i;
      }
    }
    return most;
  }

  /** The least filled of the sheets that count, or of those that have a price. */
  int leastFilledThatCosts(boolean count) {
    int least = -1;
    for (int i = 0; i < this.count; i++) {
      SheetKind kind = problem.sheets().get(sheets[i].kind);
      boolean costs = count ? kind.counted() : kind.price() > 0;
      if (costs && (least < 0 || filled(i) < filled(least))) {
        least = i;
      }
    }
    return least;
  }

  private long filled(int at) {
    return (long) sheets[at].root.length * sheets[at].root.width - sheets[at].free;
  }

  /** Free area of all sheets. */
  long free() {
    long free = 0;
    for (int i = 0; i < count; i++) {
      free += sheets[i].free;
    }
    return free;
  }

  int open(OpenSheet sheet) {
    if (count == sheets.length) {
      sheets = Arrays.copyOf(sheets, count * 2);
    }
    sheets[count] = sheet;
    SheetKind kind = problem.sheets().get(sheet.kind);
    counted += kind.counted() ? 1 : 0;
    price += kind.price();
    return count++;
  }

  /** Closes a sheet; its pieces go out. The last sheet takes its number. */
  void close(int at) {
    OpenSheet sheet = sheets[at];
    for (Block piece : sheet.pieces) {
      out[piece.kind]++;
      outArea += (long) piece.length * piece.width;
    }
    SheetKind kind = problem.sheets().get(sheet.kind);
    counted -= kind.counted() ? 1 : 0;
    price -= kind.price();
    sheets[at] = sheets[--count];
    sheets[count] = null;
  }

  int used(int sheetKind) {
    int used = 0;
    for (int i = 0; i < count; i++) {
      used += sheets[i].kind == sheetKind ? 1 : 0;
    }
    return used;
  }
}
