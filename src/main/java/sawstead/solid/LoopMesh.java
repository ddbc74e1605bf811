package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Triangles for convex loops whose edges must all be kept, in-line corners included. */
final class LoopMesh {
  /** Least height of a triangle over its longest edge, as a part of that edge. */
  private static final double FLAT = 1e-9;

  private final List<double[]> vertices;
  private final Map<Integer, Integer> names = new HashMap<>();
  private final List<double[]> used = new ArrayList<>();
  private int[] triangles = new int[192];
  private int count;

  LoopMesh(List<double[]> vertices) {
    this.vertices = vertices;
  }

  /**
   * Adds a loop as a fan from one of its corners, or, where each fan has a flat triangle, its
   * centre.
   */
  void add(int[] loop) {
    for (int apex = 0; apex < loop.length; apex++) {
      if (isSoundFan(loop, apex)) {
        for (int k = 1; k + 1 < loop.length; k++) {
          triangle(
              name(loop[apex]), name(corner(loop, apex + k)), name(corner(loop, apex + k + 1)));
        }
        return;
      }
    }
    double[] centre = new double[3];
    for (int p : loop) {
      for (int k = 0; k < 3; k++) {
        centre[k] += vertices.get(p)[k] / loop.length;
      }
    }
    int middle = used.size();
    used.add(centre);
    for (int k = 0; k < loop.length; k++) {
      triangle(middle, name(loop[k]), name(corner(loop, k + 1)));
    }
  }

  private boolean isSoundFan(int[] loop, int apex) {
    if (loop.length == 3) {
      return true;
    }
    for (int k = 1; k + 1 < loop.length; k++) {
      if (isFlat(loop[apex], corner(loop, apex + k), corner(loop, apex + k + 1))) {
        return false;
      }
    }
    return true;
  }

  private boolean isFlat(int i, int j, int k) {
    Vec a = new Vec(vertices.get(i)[0], vertices.get(i)[1], vertices.get(i)[2]);
    Vec ab = new Vec(vertices.get(j)[0], vertices.get(j)[1], vertices.get(j)[2]).minus(a);
    Vec ac = new Vec(vertices.get(k)[0], vertices.get(k)[1], vertices.get(k)[2]).minus(a);
    double longest = Math.max(ab.length(), Math.max(ac.length(), ac.minus(ab).length()));
    return ab.cross(ac).length() <= FLAT * longest * longest;
  }

  private static int corner(int[] loop, int at) {
    return loop[at % loop.length];
  }

  private int name(int vertex) {
    return names.computeIfAbsent(
        vertex,
        key -> {
          used.add(vertices.get(vertex));
          return used.size() - 1;
        });
  }

  private void triangle(int a, int b, int c) {
    if (count + 3 > triangles.length) {
      triangles = Arrays.copyOf(triangles, 2 * triangles.length);
    }
    triangles[count++] = a;
    triangles[count++] = b;
    triangles[count++] = c;
  }

  Mesh mesh() {
    double[] xyz = new double[3 * used.size()];
    for (int i = 0; i < used.size(); i++) {
      System.arraycopy(used.get(i), 0, xyz, 3 * i, 3);
    }
    return new Mesh(xyz, Arrays.copyOf(triangles, count));
  }
}
