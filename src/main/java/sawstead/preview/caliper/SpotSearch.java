package sawstead.preview.caliper;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/** Finds triangles and edges of a mesh near a point. */
final class SpotSearch {
  /** Cosine of the least angle between two faces that makes their edge one: 10 degrees. */
  private static final double FLAT = Math.cos(Math.toRadians(10));

  private SpotSearch() {}

  static Vec normal(Mesh mesh, int t) {
    Vec a = mesh.vertex(mesh.corner(t, 0));
    Vec cross =
        mesh.vertex(mesh.corner(t, 1)).minus(a).cross(mesh.vertex(mesh.corner(t, 2)).minus(a));
    return cross.length() > 0 ? cross.unit() : new Vec(0, 0, 1);
  }

  /** How far a point is from a triangle, mm; exact above its inside, never too small beside it. */
  static double distance(Mesh mesh, int t, Vec p) {
    Vec n = normal(mesh, t);
    Vec a = mesh.vertex(mesh.corner(t, 0));
    double up = Math.abs(p.minus(a).dot(n));
    boolean inside = true;
    double beside = Double.POSITIVE_INFINITY;
    for (int k = 0; k < 3; k++) {
      Vec from = mesh.vertex(mesh.corner(t, k));
      Vec to = mesh.vertex(mesh.corner(t, (k + 1) % 3));
      inside &= to.minus(from).cross(p.minus(from)).dot(n) >= 0;
      beside = Math.min(beside, onto(from, to, p).distance(p));
    }
    return inside ? up : beside;
  }

  /** The point of a segment that is nearest to another. */
  static Vec onto(Vec from, Vec to, Vec p) {
    Vec d = to.minus(from);
    double square = d.dot(d);
    double t = square > 0 ? Math.max(0, Math.min(1, p.minus(from).dot(d) / square)) : 0;
    return from.plus(d.scale(t));
  }

  /** The sharp edge nearest to a point, if one is near enough. */
  static Optional<Vec[]> edge(Mesh mesh, Vec p, double reach) {
    Map<Long, Vec> first = new HashMap<>();
    Vec[] best = null;
    double least = reach;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec normal = normal(mesh, t);
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        Vec other = first.putIfAbsent(key, normal);
        if (other != null && other.dot(normal) < FLAT) {
          double off = onto(mesh.vertex(a), mesh.vertex(b), p).distance(p);
          if (off < least) {
            least = off;
            best = new Vec[] {mesh.vertex(a), mesh.vertex(b)};
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }
}
