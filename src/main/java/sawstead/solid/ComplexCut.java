package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One flat cut through a complex. Vertices within a tolerance of the plane count as on it; if that
 * leaves a cell whose cut face is no single loop, a wider tolerance is tried.
 */
final class ComplexCut {
  /** Tried in turn, mm: the grid's step first. */
  static final double[] TOLERANCES = {Slabs.GRID, 16 * Slabs.GRID, 256 * Slabs.GRID};

  private final Complex from;
  private final List<double[]> vertices;
  private final int[] sides;
  private final double[] away;
  private final Map<Long, Integer> crossings = new HashMap<>();
  private final List<int[]> faces = new ArrayList<>();

  private ComplexCut(Complex from, Plane plane, double tolerance) {
    this.from = from;
    vertices = new ArrayList<>(from.vertices());
    sides = new int[vertices.size()];
    away = new double[vertices.size()];
    for (int i = 0; i < sides.length; i++) {
      double[] p = vertices.get(i);
      away[i] = plane.nx() * p[0] + plane.ny() * p[1] + plane.nz() * p[2] - plane.offset();
      sides[i] = Math.abs(away[i]) <= tolerance ? 0 : (int) Math.signum(away[i]);
    }
  }

  static Complex of(Complex from, Plane plane) {
    for (double tolerance : TOLERANCES) {
      Complex cut = new ComplexCut(from, plane, tolerance).cut();
      if (cut != null) {
        return cut;
      }
    }
    throw new SolidException(
        "a bevel runs within a thousandth of a millimetre of another cut: move one of them");
  }

  /** The part within the plane, or null if the tolerance does not tell. */
  private Complex cut() {
    for (int[] loop : from.faces()) {
      faces.add(kept(loop));
    }
    List<int[]> cells = new ArrayList<>();
    for (int[] cell : from.cells()) {
      boolean below = false;
      boolean above = false;
      for (int reference : cell) {
        for (int p : from.faces().get(reference >= 0 ? reference : ~reference)) {
          below |= sides[p] < 0;
          above |= sides[p] > 0;
        }
      }
      if (!above) {
        cells.add(cell);
      } else if (below) {
        int[] part = cutCell(cell);
        if (part == null) {
          return null;
        }
        cells.add(part);
      }
    }
    return Complex.taking(vertices, faces, cells);
  }

  /** The part of a face that is kept; empty if none is. */
  private int[] kept(int[] loop) {
    int[] out = new int[2 * loop.length];
    int n = 0;
    boolean below = false;
    boolean above = false;
    for (int i = 0; i < loop.length; i++) {
      int a = loop[i];
      int b = loop[(i + 1) % loop.length];
      below |= sides[a] < 0;
      above |= sides[a] > 0;
      if (sides[a] <= 0) {
        out[n++] = a;
      }
      if (sides[a] * sides[b] < 0) {
        out[n++] = crossing(Math.min(a, b), Math.max(a, b));
      }
    }
    if (!above) {
      return loop;
    }
    return below ? Arrays.copyOf(out, n) : new int[0];
  }

  private int crossing(int a, int b) {
    return crossings.computeIfAbsent(
        ((long) a << 32) | b,
        key -> {
          double t = away[a] / (away[a] - away[b]);
          double[] p = vertices.get(a);
          double[] q = vertices.get(b);
          vertices.add(
              new double[] {
                p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1]), p[2] + t * (q[2] - p[2])
              });
          return vertices.size() - 1;
        });
  }

  private boolean isOn(int vertex) {
    return vertex >= sides.length || sides[vertex] == 0;
  }

  private int[] cutCell(int[] cell) {
    List<Integer> references = new ArrayList<>();
    Map<Integer, Integer> cap = new HashMap<>();
    for (int reference : cell) {
      int[] loop = Complex.seen(faces, reference);
      if (loop.length == 0) {
        continue;
      }
      references.add(reference);
      for (int i = 0; i < loop.length; i++) {
        int a = loop[i];
        int b = loop[(i + 1) % loop.length];
        // Two kept faces that meet on the plane need no cap between them.
        if (isOn(a) && isOn(b) && !cap.remove(a, b) && cap.put(b, a) != null) {
          return null;
        }
      }
    }
    int[] loop = chained(cap);
    if (loop == null) {
      return null;
    }
    faces.add(loop);
    references.add(faces.size() - 1);
    return references.stream().mapToInt(Integer::intValue).toArray();
  }

  private static int[] chained(Map<Integer, Integer> next) {
    if (next.size() < 3) {
      return null;
    }
    int[] loop = new int[next.size()];
    int at = next.keySet().iterator().next();
    for (int i = 0; i < loop.length; i++) {
      loop[i] = at;
      Integer then = next.get(at);
      if (then == null || (then == loop[0]) != (i == loop.length - 1)) {
        return null;
      }
      at = then;
    }
    return loop;
  }
}
