package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Slabs of axis-parallel linework: every u and v of a corner is a line of a grid, a ring covers
 * whole cells of it, and no noding is needed. Lines that part nothing are dropped.
 */
final class GridSlabs {
  private final Storeys storeys;
  private double[] us;
  private double[] vs;
  private BitSet[][] columns;

  private GridSlabs(Storeys storeys) {
    this.storeys = storeys;
  }

  static Slabs of(Storeys storeys) {
    GridSlabs grid = new GridSlabs(storeys);
    grid.classify();
    grid.dropIdleLines();
    return new Slabs(storeys.heights(), grid.plan(), new double[storeys.heights().length - 1]);
  }

  private void classify() {
    us = lines(0);
    vs = lines(1);
    BitSet[][] inside = new BitSet[us.length - 1][vs.length - 1];
    for (BitSet[] strip : inside) {
      Arrays.setAll(strip, j -> new BitSet());
    }
    for (int r = 0; r < storeys.rings().size(); r++) {
      Ring ring = storeys.rings().get(r);
      for (int i = 0; i < ring.size(); i++) {
        int next = (i + 1) % ring.size();
        if (ring.uv()[2 * i] == ring.uv()[2 * next]) {
          crossEdge(inside, r, ring.uv()[2 * i], ring.uv()[2 * i + 1], ring.uv()[2 * next + 1]);
        }
      }
    }
    columns = new BitSet[us.length - 1][vs.length - 1];
    for (int i = 0; i < columns.length; i++) {
      for (int j = 0; j < columns[i].length; j++) {
        columns[i][j] = storeys.column(inside[i][j]);
      }
    }
  }

  /** Everything beyond an edge along v changes sides. */
  private void crossEdge(BitSet[][] inside, int ring, double u, double v0, double v1) {
    int first = Arrays.binarySearch(vs, Math.min(v0, v1));
    int last = Arrays.binarySearch(vs, Math.max(v0, v1));
    for (int i = Arrays.binarySearch(us, u); i < inside.length; i++) {
      for (int j = first; j < last; j++) {
        inside[i][j].flip(ring);
      }
    }
  }

  private double[] lines(int axis) {
    return storeys.rings().stream()
        .flatMapToDouble(
            r ->
                java.util.stream.IntStream.range(0, r.size())
                    .mapToDouble(i -> r.uv()[2 * i + axis]))
        .sorted()
        .distinct()
        .toArray();
  }

  private void dropIdleLines() {
    List<BitSet[]> strips = new ArrayList<>(List.of(columns));
    us = dropIdle(us, strips);
    List<BitSet[]> across = new ArrayList<>();
    for (int j = 0; j + 1 < vs.length; j++) {
      int row = j;
      across.add(strips.stream().map(s -> s[row]).toArray(BitSet[]::new));
    }
    vs = dropIdle(vs, across);
    columns = new BitSet[us.length - 1][vs.length - 1];
    for (int i = 0; i < columns.length; i++) {
      for (int j = 0; j < columns[i].length; j++) {
        columns[i][j] = across.get(j)[i];
      }
    }
  }

  /** Joins equal neighbouring strips and returns the lines that remain. */
  private static double[] dropIdle(double[] lines, List<BitSet[]> strips) {
    List<Double> kept = new ArrayList<>();
    kept.add(lines[0]);
    int at = 0;
    for (int k = 1; k + 1 < lines.length; k++) {
      if (Arrays.equals(strips.get(at), strips.get(at + 1))) {
        strips.remove(at + 1);
      } else {
        kept.add(lines[k]);
        at++;
      }
    }
    kept.add(lines[lines.length - 1]);
    return kept.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private Plan plan() {
    double[] uv = new double[2 * us.length * vs.length];
    for (int i = 0; i < us.length; i++) {
      for (int j = 0; j < vs.length; j++) {
        uv[2 * (i * vs.length + j)] = us[i];
        uv[2 * (i * vs.length + j) + 1] = vs[j];
      }
    }
    int[] triangles = new int[6 * columns.length * columns[0].length];
    List<BitSet> of = new ArrayList<>();
    int n = 0;
    for (int i = 0; i < columns.length; i++) {
      for (int j = 0; j < columns[i].length; j++) {
        if (!columns[i][j].isEmpty()) {
          int a = i * vs.length + j;
          int b = a + vs.length;
          for (int corner : new int[] {a, b, b + 1, a, b + 1, a + 1}) {
            triangles[n++] = corner;
          }
          of.add(columns[i][j]);
          of.add(columns[i][j]);
        }
      }
    }
    return Plan.of(uv, Arrays.copyOf(triangles, n), of);
  }
}
