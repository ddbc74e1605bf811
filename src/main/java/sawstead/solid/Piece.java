package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A convex polyhedron as flat arrays: corners, outward unit planes, faces as loops of corners
 * (counter-clockwise from outside), and the directions of its edges, parallel ones once.
 */
public final class Piece {
  /** Below this sine two edge directions count as one, which can lower no depth by much. */
  private static final double PARALLEL = 1e-9;

  final double[] points;
  final double[] planes;
  final int[] starts;
  final int[] loops;
  final double[] edges;
  final double[] box;

  /** How many corners, from the first on, have the others straight above them; else all of them. */
  private final int ring;

  /**
   * Takes over its arrays.
   *
   * @param points x, y, z of each corner, mm
   * @param planes nx, ny, nz, offset of each face; the piece is where n . p <= offset
   * @param starts where each face's loop starts in {@code loops}, and at last where the last ends
   * @param loops corner indices
   * @param edges direction of each edge, unit, up to sign; null to have them worked out
   */
  Piece(double[] points, double[] planes, int[] starts, int[] loops, double[] edges) {
    this(points, planes, starts, loops, edges, points.length / 3);
  }

  private Piece(
      double[] points, double[] planes, int[] starts, int[] loops, double[] edges, int ring) {
    this.ring = ring;
    this.points = points;
    this.planes = planes;
    this.starts = starts;
    this.loops = loops;
    this.edges = edges == null ? edgesOf(points, starts, loops) : edges;
    this.box = boxOf(points);
  }

  /** Right prism over a convex counter-clockwise ring u0, v0, ... between two heights, mm. */
  static Piece prism(double[] uv, double low, double high) {
    int n = uv.length / 2;
    double[] corners = new double[5 * n];
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double du = uv[2 * j] - uv[2 * i];
      double dv = uv[2 * j + 1] - uv[2 * i + 1];
      double length = Math.hypot(du, dv);
      corners[5 * i] = uv[2 * i];
      corners[5 * i + 1] = uv[2 * i + 1];
      corners[5 * i + 2] = dv / length;
      corners[5 * i + 3] = -du / length;
      corners[5 * i + 4] = (dv * uv[2 * i] - du * uv[2 * i + 1]) / length;
    }
    return prismOf(corners, low, high);
  }

  /**
   * Right prism between two heights over a convex counter-clockwise ring.
   *
   * @param corners u, v of each corner and nu, nv, c of the edge that leaves it, where the ring
   *     lies in nu u + nv v <= c
   */
  static Piece prismOf(double[] corners, double low, double high) {
    int n = corners.length / 5;
    double[] points = new double[6 * n];
    double[] planes = new double[4 * (n + 2)];
    int[] starts = new int[n + 3];
    int[] loops = new int[6 * n];
    List<double[]> edges = new ArrayList<>(List.of(new double[] {0, 0, 1}));
    for (int i = 0; i < n; i++) {
      points[3 * i] = points[3 * (n + i)] = corners[5 * i];
      points[3 * i + 1] = points[3 * (n + i) + 1] = corners[5 * i + 1];
      points[3 * i + 2] = low;
      points[3 * (n + i) + 2] = high;
      planes[4 * i] = corners[5 * i + 2];
      planes[4 * i + 1] = corners[5 * i + 3];
      planes[4 * i + 3] = corners[5 * i + 4];
      addDirection(edges, -corners[5 * i + 3], corners[5 * i + 2], 0);
      int j = (i + 1) % n;
      starts[i] = 4 * i;
      loops[4 * i] = i;
      loops[4 * i + 1] = j;
      loops[4 * i + 2] = n + j;
      loops[4 * i + 3] = n + i;
      loops[4 * n + i] = n - 1 - i;
      loops[5 * n + i] = n + i;
    }
    planes[4 * n + 2] = -1;
    planes[4 * n + 3] = -low;
    planes[4 * n + 6] = 1;
    planes[4 * n + 7] = high;
    starts[n] = 4 * n;
    starts[n + 1] = 5 * n;
    starts[n + 2] = 6 * n;
    return new Piece(points, planes, starts, loops, flat(edges), n);
  }

  /** This piece after a rigid motion; loops are shared. */
  Piece placed(Placement to) {
    double[] moved = turned(points, 3, to);
    for (int i = 0; i < moved.length; i += 3) {
      moved[i] += to.origin().x();
      moved[i + 1] += to.origin().y();
      moved[i + 2] += to.origin().z();
    }
    double[] faces = turned(planes, 4, to);
    for (int f = 0; f < faces.length; f += 4) {
      faces[f + 3] =
          planes[f + 3]
              + faces[f] * to.origin().x()
              + faces[f + 1] * to.origin().y()
              + faces[f + 2] * to.origin().z();
    }
    return new Piece(moved, faces, starts, loops, turned(edges, 3, to), ring);
  }

  /**
   * From where to where the piece reaches along a direction.
   *
   * @param span set to the least and the greatest of n . p
   */
  void span(double x, double y, double z, double[] span) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3 * ring; i += 3) {
      double at = x * points[i] + y * points[i + 1] + z * points[i + 2];
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
    if (3 * ring < points.length) {
      int above = 3 * ring;
      double up =
          x * (points[above] - points[0])
              + y * (points[above + 1] - points[1])
              + z * (points[above + 2] - points[2]);
      low += Math.min(0, up);
      high += Math.max(0, up);
    }
    span[0] = low;
    span[1] = high;
  }

  /** Number of corners. */
  public int vertexCount() {
    return points.length / 3;
  }

  /** A corner, mm. */
  public Vec vertex(int index) {
    return new Vec(points[3 * index], points[3 * index + 1], points[3 * index + 2]);
  }

  /** Number of faces. */
  public int faceCount() {
    return planes.length / 4;
  }

  /** True if the point is inside, on the surface, or outside every plane by no more than given. */
  public boolean contains(Vec point, double margin) {
    return holds(point.x(), point.y(), point.z(), margin);
  }

  boolean holds(double x, double y, double z, double margin) {
    for (int f = 0; f < planes.length; f += 4) {
      if (planes[f] * x + planes[f + 1] * y + planes[f + 2] * z > planes[f + 3] + margin) {
        return false;
      }
    }
    return true;
  }

  /** Volume, mm3. */
  public double volume() {
    double sum = 0;
    for (int f = 0; f < faceCount(); f++) {
      for (int k = starts[f] + 1; k + 1 < starts[f + 1]; k++) {
        sum += Flat.volume6(points, 0, loops[starts[f]], loops[k], loops[k + 1]);
      }
    }
    return sum / 6;
  }

  /** The least axis-parallel box around the piece, mm. */
  public Box box() {
    return new Box(new Vec(box[0], box[1], box[2]), new Vec(box[3], box[4], box[5]));
  }

  private static double[] turned(double[] from, int stride, Placement to) {
    Vec u = to.u();
    Vec v = to.v();
    Vec w = to.w();
    double[] out = new double[from.length];
    for (int i = 0; i < from.length; i += stride) {
      double x = from[i];
      double y = from[i + 1];
      double z = from[i + 2];
      out[i] = u.x() * x + v.x() * y + w.x() * z;
      out[i + 1] = u.y() * x + v.y() * y + w.y() * z;
      out[i + 2] = u.z() * x + v.z() * y + w.z() * z;
    }
    return out;
  }

  private static double[] boxOf(double[] p) {
    double[] b = {p[0], p[1], p[2], p[0], p[1], p[2]};
    for (int i = 3; i < p.length; i++) {
      int k = i % 3;
      b[k] = Math.min(b[k], p[i]);
      b[3 + k] = Math.max(b[3 + k], p[i]);
    }
    return b;
  }

  private static double[] edgesOf(double[] points, int[] starts, int[] loops) {
    List<double[]> found = new ArrayList<>();
    for (int f = 0; f + 1 < starts.length; f++) {
      int n = starts[f + 1] - starts[f];
      for (int k = 0; k < n; k++) {
        int from = loops[starts[f] + k];
        int to = loops[starts[f] + (k + 1) % n];
        // Each edge is met twice, once each way: the upward one stands for both.
        if (from < to) {
          addEdge(found, points, from, to);
        }
      }
    }
    return flat(found);
  }

  private static void addEdge(List<double[]> found, double[] p, int from, int to) {
    double x = p[3 * to] - p[3 * from];
    double y = p[3 * to + 1] - p[3 * from + 1];
    double z = p[3 * to + 2] - p[3 * from + 2];
    double length = Math.sqrt(x * x + y * y + z * z);
    // The direction of an edge as short as a step of the grid is rounding, nothing else.
    if (length > Slabs.GRID) {
      addDirection(found, x / length, y / length, z / length);
    }
  }

  private static void addDirection(List<double[]> found, double x, double y, double z) {
    for (double[] d : found) {
      double cx = d[1] * z - d[2] * y;
      double cy = d[2] * x - d[0] * z;
      double cz = d[0] * y - d[1] * x;
      if (cx * cx + cy * cy + cz * cz < PARALLEL * PARALLEL) {
        return;
      }
    }
    found.add(new double[] {x, y, z});
  }

  private static double[] flat(List<double[]> directions) {
    return directions.stream().flatMapToDouble(Arrays::stream).toArray();
  }
}
