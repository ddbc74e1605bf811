package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A solid as convex cells that share whole faces and whole edges, so that flat cuts leave no
 * T-junction: a cut splits each edge once, for all faces and cells around it.
 *
 * <p>A face is a loop of vertices seen from one side; a cell lists its faces, those it sees from
 * the other side as the complement of their index.
 */
final class Complex {
  private final List<double[]> vertices = new ArrayList<>();
  private final List<int[]> faces = new ArrayList<>();
  private final List<int[]> cells = new ArrayList<>();

  private Complex() {}

  /** One cell for each triangle and level of slabs. */
  static Complex of(Slabs slabs) {
    return new Builder(slabs).built();
  }

  private static final class Builder {
    private final Slabs slabs;
    private final Plan plan;
    private final Complex complex = new Complex();
    private final Map<Integer, Integer> vertexAt = new HashMap<>();
    private final Map<Integer, Integer> lidAt = new HashMap<>();
    private final Map<Integer, Integer> wallAt = new HashMap<>();

    Builder(Slabs slabs) {
      this.slabs = slabs;
      this.plan = slabs.plan();
    }

    Complex built() {
      for (int t = 0; t < plan.size(); t++) {
        BitSet column = plan.columns().get(t);
        for (int k = column.nextSetBit(0); k >= 0; k = column.nextSetBit(k + 1)) {
          complex.cells.add(
              new int[] {
                ~lid(t, k), lid(t, k + 1), wall(3 * t, k), wall(3 * t + 1, k), wall(3 * t + 2, k)
              });
        }
      }
      return complex;
    }

    /** The triangle at a height, seen from above. */
    private int lid(int t, int height) {
      return lidAt.computeIfAbsent(
          t * slabs.heights().length + height,
          key -> {
            int[] loop = new int[3];
            for (int k = 0; k < 3; k++) {
              loop[k] = vertex(plan.triangles()[3 * t + k], height);
            }
            return complex.add(loop);
          });
    }

    /** The wall over a half-edge, seen from outside its triangle. */
    private int wall(int h, int level) {
      Integer known =
          plan.twins()[h] < 0 ? null : wallAt.get(plan.twins()[h] * slabs.heights().length + level);
      if (known != null) {
        return ~known;
      }
      int a = plan.triangles()[h];
      int b = plan.triangles()[Plan.next(h)];
      int face =
          complex.add(
              new int[] {
                vertex(a, level), vertex(b, level), vertex(b, level + 1), vertex(a, level + 1)
              });
      wallAt.put(h * slabs.heights().length + level, face);
      return face;
    }

    private int vertex(int v, int height) {
      return vertexAt.computeIfAbsent(
          v * slabs.heights().length + height,
          key -> {
            complex.vertices.add(new double[] {plan.u(v), plan.v(v), slabs.heights()[height]});
            return complex.vertices.size() - 1;
          });
    }
  }

  private int add(int[] loop) {
    faces.add(loop);
    return faces.size() - 1;
  }

  /**
   * What lies within all half-spaces.
   *
   * @throws SolidException if nothing does, or if a cut runs so close to a face or to another cut
   *     that no tolerance of {@link ComplexCut#TOLERANCES} tells their order
   */
  Complex cut(List<Plane> planes) {
    Complex left = this;
    for (Plane plane : planes) {
      left = ComplexCut.of(left, plane);
      if (left.cells.isEmpty()) {
        throw new SolidException("nothing is left of a panel: its bevels take away all of it");
      }
    }
    return left;
  }

  /** Takes over lists that a cut has made. */
  static Complex taking(List<double[]> vertices, List<int[]> faces, List<int[]> cells) {
    Complex complex = new Complex();
    complex.vertices.addAll(vertices);
    complex.faces.addAll(faces);
    complex.cells.addAll(cells);
    return complex;
  }

  List<double[]> vertices() {
    return vertices;
  }

  List<int[]> faces() {
    return faces;
  }

  List<int[]> cells() {
    return cells;
  }

  /** The loop of a face as one of its cells sees it from outside. */
  static int[] seen(List<int[]> faces, int reference) {
    if (reference >= 0) {
      return faces.get(reference);
    }
    int[] loop = faces.get(~reference);
    int[] back = new int[loop.length];
    for (int i = 0; i < loop.length; i++) {
      back[i] = loop[loop.length - 1 - i];
    }
    return back;
  }

  /** Mesh of the faces that belong to one cell only. */
  Mesh mesh() {
    int[] owners = new int[faces.size()];
    for (int[] cell : cells) {
      for (int reference : cell) {
        owners[reference >= 0 ? reference : ~reference]++;
      }
    }
    LoopMesh mesh = new LoopMesh(vertices);
    for (int[] cell : cells) {
      for (int reference : cell) {
        if (owners[reference >= 0 ? reference : ~reference] == 1) {
          mesh.add(seen(faces, reference));
        }
      }
    }
    return mesh.mesh();
  }
}
