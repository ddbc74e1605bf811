package sawstead.preview.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.solid.Piece;
import sawstead.solid.Solid;
import sawstead.solid.Vec;

/**
 * The face that a section leaves on a solid: for each convex piece, the polygon in which the plane
 * meets it.
 *
 * <p>The section of a convex polyhedron is the hull of the points in which the plane meets the
 * segments between its corners on either side; so the corners suffice and faces need not be known.
 */
final class Cut {
  private Cut() {}

  static Triangles of(Solid solid, Section.Half half, double thickness) {
    Triangles face = new Triangles();
    for (Piece piece : solid.partition()) {
      List<Vec> polygon = polygon(piece, half);
      for (int i = 2; i < polygon.size(); i++) {
        for (Vec p : List.of(polygon.get(0), polygon.get(i - 1), polygon.get(i))) {
          double along = Math.abs(half.normal().x()) > 0.5 ? p.y() : p.x();
          face.corner(p, along / Grain.EDGE_LENGTH, p.z() / thickness);
        }
      }
    }
    return face;
  }

  private static List<Vec> polygon(Piece piece, Section.Half half) {
    List<Vec> inside = new ArrayList<>();
    List<Vec> outside = new ArrayList<>();
    for (int i = 0; i < piece.vertexCount(); i++) {
      Vec p = piece.vertex(i);
      (half.beyond(p) > 0 ? outside : inside).add(p);
    }
    List<Vec> points = new ArrayList<>();
    for (Vec a : inside) {
      for (Vec b : outside) {
        double da = -half.beyond(a);
        double db = half.beyond(b);
        points.add(a.plus(b.minus(a).scale(da / (da + db))));
      }
    }
    return points.size() < 3 ? List.of() : hull(points, half.normal());
  }

  /** Convex hull in the plane, counter-clockwise seen against the normal (A. M. Andrew, 1979). */
  private static List<Vec> hull(List<Vec> points, Vec normal) {
    Vec helper = Math.abs(normal.x()) < 0.9 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec p = normal.cross(helper).unit();
    Vec q = normal.cross(p);
    List<Vec> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble((Vec v) -> v.dot(p)).thenComparingDouble(v -> v.dot(q)));
    List<Vec> hull = new ArrayList<>(chain(sorted, normal));
    List<Vec> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    hull.addAll(chain(back, normal));
    return hull;
  }

  private static List<Vec> chain(List<Vec> sorted, Vec normal) {
    List<Vec> chain = new ArrayList<>();
    for (Vec point : sorted) {
      while (chain.size() >= 2 && turn(chain, point, normal) <= 1e-9) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  private static double turn(List<Vec> chain, Vec next, Vec normal) {
    Vec a = chain.get(chain.size() - 2);
    Vec b = chain.get(chain.size() - 1);
    return b.minus(a).cross(next.minus(a)).dot(normal);
  }
}
