package sawstead.solid;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;

/**
 * The plan of a solid as a triangulation that serves all levels: triangles share whole edges or
 * nothing, so that whatever is raised on them has no T-junctions.
 *
 * @param uv vertices u0, v0, ..., on the grid
 * @param triangles three vertices each, counter-clockwise; only triangles with material at some
 *     level
 * @param columns for each triangle, the levels at which it is material
 * @param twins for edge k of triangle t, at 3 t + k, the same edge of the neighbour, or -1
 */
record Plan(double[] uv, int[] triangles, List<BitSet> columns, int[] twins) {
  /**
   * Links neighbours.
   *
   * @throws IllegalStateException if two triangles claim one directed edge, or one is turned over
   */
  static Plan of(double[] uv, int[] triangles, List<BitSet> columns) {
    int[] twins = new int[triangles.length];
    Map<Long, Integer> at = new HashMap<>(2 * triangles.length);
    for (int h = 0; h < triangles.length; h++) {
      long key = key(triangles[h], triangles[next(h)]);
      if (at.put(key, h) != null) {
        throw new IllegalStateException("two triangles on one side of an edge");
      }
    }
    for (int h = 0; h < triangles.length; h++) {
      twins[h] = at.getOrDefault(key(triangles[next(h)], triangles[h]), -1);
    }
    Plan plan = new Plan(uv, triangles, columns, twins);
    for (int t = 0; t < plan.size(); t++) {
      if (plan.turn(triangles[3 * t], triangles[3 * t + 1], triangles[3 * t + 2]) <= 0) {
        throw new IllegalStateException("a triangle without area");
      }
    }
    return plan;
  }

  /** Number of triangles. */
  int size() {
    return triangles.length / 3;
  }

  double u(int vertex) {
    return uv[2 * vertex];
  }

  double v(int vertex) {
    return uv[2 * vertex + 1];
  }

  /** The half-edge after this one in its triangle. */
  static int next(int h) {
    return h % 3 == 2 ? h - 2 : h + 1;
  }

  /** 1 if a, b, c turn left, -1 right, 0 if they are in line; exact. */
  int turn(int a, int b, int c) {
    return Orientation.index(point(a), point(b), point(c));
  }

  /** Area of a triangle, mm2. */
  double area(int t) {
    int a = triangles[3 * t];
    int b = triangles[3 * t + 1];
    int c = triangles[3 * t + 2];
    return ((u(b) - u(a)) * (v(c) - v(a)) - (u(c) - u(a)) * (v(b) - v(a))) / 2;
  }

  private org.locationtech.jts.geom.Coordinate point(int vertex) {
    return new org.locationtech.jts.geom.Coordinate(u(vertex), v(vertex));
  }

  private static long key(int from, int to) {
    return ((long) from << 32) | to;
  }
}
