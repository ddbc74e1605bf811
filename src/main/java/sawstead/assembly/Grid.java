package sawstead.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * The compressed grid of translations: cut at every face of every forbidden box, so that each cell
 * is wholly free or wholly forbidden. Its outermost cells reach to infinity. Moving straight from a
 * free cell into a free cell beside it never touches the inside of a forbidden box, so the search
 * is complete for chains of axis-parallel translations, and for all paths of translations.
 */
final class Grid {
  /** At most so many cells are looked at. */
  static final int MOST_CELLS = 20_000_000;

  /** Faces nearer than this are one, mm: rounding, far below the play. */
  private static final double SAME = 1e-7;

  /** How far beyond the last face a way ends, mm. */
  private static final double BEYOND = 50;

  private final double[][] cuts = new double[3][];
  private final int[] count = new int[3];
  private final BitSet forbidden = new BitSet();
  private int[] from;

  private Grid() {}

  /**
   * The grid of some boxes that move among others.
   *
   * @param movers that move as one
   * @param others that stay
   * @param play depth that is allowed, mm
   * @param lowest the least translation along z, where there is a floor
   * @return empty if it would have more than {@link #MOST_CELLS} cells
   */
  static Optional<Grid> of(
      List<Box> movers, List<Box> others, double play, Optional<Double> lowest) {
    List<double[]> boxes = new ArrayList<>();
    for (Box m : movers) {
      for (Box o : others) {
        double[] box = {
          o.low().x() - m.high().x() + play,
          o.low().y() - m.high().y() + play,
          o.low().z() - m.high().z() + play,
          o.high().x() - m.low().x() - play,
          o.high().y() - m.low().y() - play,
          o.high().z() - m.low().z() - play
        };
        if (box[0] < box[3] && box[1] < box[4] && box[2] < box[5]) {
          boxes.add(box);
        }
      }
    }
    Grid grid = new Grid();
    long cells = 1;
    for (int k = 0; k < 3; k++) {
      int axis = k;
      double[] all =
          boxes.stream().flatMapToDouble(b -> Arrays.stream(b, axis, axis + 1)).toArray();
      double[] ends =
          boxes.stream().flatMapToDouble(b -> Arrays.stream(b, axis + 3, axis + 4)).toArray();
      double[] faces = Arrays.copyOf(all, all.length + ends.length + 1);
      System.arraycopy(ends, 0, faces, all.length, ends.length);
      faces[faces.length - 1] = k == 2 && lowest.isPresent() ? lowest.get() : 0;
      grid.cuts[k] = distinct(faces);
      grid.count[k] = grid.cuts[k].length + 1;
      cells *= grid.count[k];
      if (cells > MOST_CELLS) {
        return Optional.empty();
      }
    }
    boxes.forEach(grid::forbid);
    lowest.ifPresent(grid::forbidBelow);
    return Optional.of(grid);
  }

  private static double[] distinct(double[] faces) {
    Arrays.sort(faces);
    int n = 0;
    for (double face : faces) {
      if (n == 0 || face - faces[n - 1] > SAME) {
        faces[n++] = face;
      }
    }
    return Arrays.copyOf(faces, n);
  }

  /** Number of the cut at a coordinate; the cell before it has the same number. */
  private int cut(int axis, double value) {
    int at = Arrays.binarySearch(cuts[axis], value);
    if (at >= 0) {
      return at;
    }
    int above = -at - 1;
    return above > 0 && value - cuts[axis][above - 1] <= SAME ? above - 1 : above;
  }

  private void forbid(double[] box) {
    int x0 = cut(0, box[0]) + 1;
    int x1 = cut(0, box[3]) + 1;
    for (int z = cut(2, box[2]) + 1; z <= cut(2, box[5]); z++) {
      for (int y = cut(1, box[1]) + 1; y <= cut(1, box[4]); y++) {
        int row = (z * count[1] + y) * count[0];
        forbidden.set(row + x0, row + x1);
      }
    }
  }

  private void forbidBelow(double lowest) {
    forbidden.set(0, (cut(2, lowest) + 1) * count[1] * count[0]);
  }

  /**
   * The way with the fewest legs from no translation to an outermost cell; empty if there is none.
   */
  Optional<List<Vec>> way() {
    from = new int[count[0] * count[1] * count[2]];
    Arrays.fill(from, -1);
    Deque<Integer> open = new ArrayDeque<>();
    for (int start : starts()) {
      from[start] = start;
      open.add(start);
    }
    while (!open.isEmpty()) {
      int cell = open.poll();
      if (isOutermost(cell)) {
        return Optional.of(legs(cell));
      }
      for (int k = 0; k < 3; k++) {
        slide(cell, k, -1, open);
        slide(cell, k, 1, open);
      }
    }
    return Optional.empty();
  }

  /** Goes on straight from a cell as long as cells are free, and notes those not seen before. */
  private void slide(int cell, int axis, int sense, Deque<Integer> open) {
    int stride = axis == 0 ? 1 : axis == 1 ? count[0] : count[0] * count[1];
    int at = index(cell, axis) + sense;
    for (int next = cell + sense * stride;
        at >= 0 && at < count[axis] && !forbidden.get(next);
        at += sense, next += sense * stride) {
      if (from[next] < 0) {
        from[next] = cell;
        open.add(next);
      }
    }
  }

  private int index(int cell, int axis) {
    return axis == 0
        ? cell % count[0]
        : axis == 1 ? cell / count[0] % count[1] : cell / (count[0] * count[1]);
  }

  private boolean isOutermost(int cell) {
    for (int k = 0; k < 3; k++) {
      int at = index(cell, k);
      if (at == 0 || at == count[k] - 1) {
        return true;
      }
    }
    return false;
  }

  /** The free cells that hold or touch the translation 0. */
  private List<Integer> starts() {
    List<Integer> starts = new ArrayList<>();
    for (int z : around(2)) {
      for (int y : around(1)) {
        for (int x : around(0)) {
          int cell = (z * count[1] + y) * count[0] + x;
          if (!forbidden.get(cell)) {
            starts.add(cell);
          }
        }
      }
    }
    return starts;
  }

  private int[] around(int axis) {
    int cut = cut(axis, 0);
    boolean on = cut < cuts[axis].length && Math.abs(cuts[axis][cut]) <= SAME;
    return on ? new int[] {cut, cut + 1} : new int[] {cut};
  }

  private List<Vec> legs(int end) {
    List<Integer> cells = new ArrayList<>(List.of(end));
    for (int cell = end; from[cell] != cell; cell = from[cell]) {
      cells.add(from[cell]);
    }
    Collections.reverse(cells);
    List<Vec> legs = new ArrayList<>();
    double[] at = new double[3];
    for (int i = 1; i < cells.size(); i++) {
      for (int k = 0; k < 3; k++) {
        int to = index(cells.get(i), k);
        if (to != index(cells.get(i - 1), k)) {
          double[] leg = new double[3];
          leg[k] = middle(k, to) - at[k];
          at[k] += leg[k];
          legs.add(new Vec(leg[0], leg[1], leg[2]));
        }
      }
    }
    for (int k = 0; k < 3; k++) {
      int last = index(end, k);
      boolean outermost = last == 0 || last == count[k] - 1;
      if (outermost && legs.isEmpty()) {
        double[] leg = new double[3];
        leg[k] = middle(k, last);
        legs.add(new Vec(leg[0], leg[1], leg[2]));
      }
    }
    return legs;
  }

  private double middle(int axis, int cell) {
    double[] c = cuts[axis];
    if (cell == 0) {
      return c[0] - BEYOND;
    }
    return cell == c.length ? c[c.length - 1] + BEYOND : (c[cell - 1] + c[cell]) / 2;
  }
}
