package sawstead.solid;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Triangle mesh of a solid, corners counter-clockwise from outside, mm.
 *
 * <p>Made so that each directed edge is met by its opposite as often as by itself; an edge may
 * carry four triangles where two parts of a solid touch along it. No triangle has two equal
 * corners.
 */
public final class Mesh {
  private final double[] vertices;
  private final int[] triangles;

  /** Takes over both arrays: x, y, z of each vertex; three vertex indices of each triangle. */
  Mesh(double[] vertices, int[] triangles) {
    this.vertices = vertices;
    this.triangles = triangles;
  }

  /** Number of vertices. */
  public int vertexCount() {
    return vertices.length / 3;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return triangles.length / 3;
  }

  /** First coordinate of a vertex, mm. */
  public double x(int vertex) {
    return vertices[3 * vertex];
  }

  /** Second coordinate of a vertex, mm. */
  public double y(int vertex) {
    return vertices[3 * vertex + 1];
  }

  /** Third coordinate of a vertex, mm. */
  public double z(int vertex) {
    return vertices[3 * vertex + 2];
  }

  /** A vertex, mm. */
  public Vec vertex(int vertex) {
    return new Vec(x(vertex), y(vertex), z(vertex));
  }

  /**
   * Vertex index of a triangle's corner.
   *
   * @param triangle index
   * @param corner 0, 1 or 2
   */
  public int corner(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  /** The same mesh after a rigid motion. */
  public Mesh placed(Placement placement) {
    double[] moved = new double[vertices.length];
    for (int i = 0; i < vertexCount(); i++) {
      Vec p = placement.apply(vertex(i));
      moved[3 * i] = p.x();
      moved[3 * i + 1] = p.y();
      moved[3 * i + 2] = p.z();
    }
    return new Mesh(moved, triangles);
  }

  /** Enclosed volume by the divergence theorem, mm3 (V = sum of a . (b x c) / 6). */
  public double volume() {
    return moments()[0];
  }

  /** Centroid of the enclosed volume, mm. */
  public Vec centroid() {
    double[] m = moments();
    return new Vec(m[1] / m[0], m[2] / m[0], m[3] / m[0]);
  }

  /** Volume and its first moments; taken from the first vertex, where cancellation is least. */
  private double[] moments() {
    double x0 = vertices[0];
    double y0 = vertices[1];
    double z0 = vertices[2];
    double[] m = new double[4];
    for (int t = 0; t < triangles.length; t += 3) {
      int a = 3 * triangles[t];
      int b = 3 * triangles[t + 1];
      int c = 3 * triangles[t + 2];
      double ax = vertices[a] - x0;
      double ay = vertices[a + 1] - y0;
      double az = vertices[a + 2] - z0;
      double bx = vertices[b] - x0;
      double by = vertices[b + 1] - y0;
      double bz = vertices[b + 2] - z0;
      double cx = vertices[c] - x0;
      double cy = vertices[c + 1] - y0;
      double cz = vertices[c + 2] - z0;
      double v =
          (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
      m[0] += v;
      m[1] += v * (ax + bx + cx) / 4;
      m[2] += v * (ay + by + cy) / 4;
      m[3] += v * (az + bz + cz) / 4;
    }
    m[1] += m[0] * x0;
    m[2] += m[0] * y0;
    m[3] += m[0] * z0;
    return m;
  }

  /** The unit normal of a triangle, outwards; zero where the triangle has no area. */
  public Vec normal(int triangle) {
    Vec a = vertex(corner(triangle, 0));
    Vec b = vertex(corner(triangle, 1));
    Vec c = vertex(corner(triangle, 2));
    Vec cross = b.minus(a).cross(c.minus(a));
    return cross.length() > 0 ? cross.unit() : Vec.ZERO;
  }

  /** Area of all triangles, mm2. */
  public double area() {
    double sum = 0;
    for (int t = 0; t < triangleCount(); t++) {
      Vec a = vertex(corner(t, 0));
      sum += vertex(corner(t, 1)).minus(a).cross(vertex(corner(t, 2)).minus(a)).length() / 2;
    }
    return sum;
  }

  /**
   * True if every directed edge is met by its opposite as often as by itself, and no triangle has
   * two equal corners. By indices: says nothing of crossing faces.
   */
  public boolean isClosedAndOriented() {
    Map<Long, Integer> balance = new HashMap<>();
    for (int t = 0; t < triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int from = corner(t, k);
        int to = corner(t, (k + 1) % 3);
        if (from == to) {
          return false;
        }
        long key = ((long) Math.min(from, to) << 32) | Math.max(from, to);
        balance.merge(key, from < to ? 1 : -1, Integer::sum);
      }
    }
    return triangles.length > 0 && balance.values().stream().allMatch(b -> b == 0);
  }

  /** The least axis-parallel box around all vertices, mm. */
  public Box box() {
    double[] low = {vertices[0], vertices[1], vertices[2]};
    double[] high = Arrays.copyOf(low, 3);
    for (int i = 0; i < vertices.length; i++) {
      low[i % 3] = Math.min(low[i % 3], vertices[i]);
      high[i % 3] = Math.max(high[i % 3], vertices[i]);
    }
    return new Box(new Vec(low[0], low[1], low[2]), new Vec(high[0], high[1], high[2]));
  }
}
