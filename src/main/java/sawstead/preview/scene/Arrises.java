package sawstead.preview.scene;

import java.util.HashMap;
import java.util.Map;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/**
 * The sharp edges of a mesh as thin square rods, so that two boards that lie flush are still seen
 * as two.
 */
final class Arrises {
  /** Half the width of a line, mm. */
  private static final double HALF = 0.55;

  /** Cosine of the least angle between two faces whose edge is drawn: 25 degrees. */
  private static final double FLAT = Math.cos(Math.toRadians(25));

  private Arrises() {}

  static Triangles of(Mesh mesh) {
    Map<Long, Vec> first = new HashMap<>();
    Triangles rods = new Triangles();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec normal = mesh.normal(t);
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        Vec other = first.putIfAbsent(key, normal);
        if (other != null && other.dot(normal) < FLAT) {
          rod(rods, mesh.vertex(a), mesh.vertex(b));
        }
      }
    }
    return rods;
  }

  private static void rod(Triangles into, Vec from, Vec to) {
    if (from.distance(to) < 1e-6) {
      return;
    }
    Vec along = to.minus(from).unit();
    Vec helper = Math.abs(along.x()) < 0.9 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec p = along.cross(helper).unit().scale(HALF);
    Vec q = along.cross(p.unit()).scale(HALF);
    Vec[] ring = {p.plus(q), q.minus(p), p.plus(q).scale(-1), p.minus(q)};
    for (int i = 0; i < 4; i++) {
      Vec a = ring[i];
      Vec b = ring[(i + 1) % 4];
      into.patch(from.plus(a), from.plus(b), to.plus(b), to.plus(a));
    }
  }
}
