package sawstead.preview.caliper;

import sawstead.solid.Body;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/** What was pointed at: a flat face or a straight edge of a body. Station frame, mm. */
public sealed interface Spot {
  /** The body. */
  Body body();

  /** The point of it that was pointed at. */
  Vec at();

  /** A flat face; its normal is unit and points out of the material. */
  record FaceSpot(Body body, Vec at, Vec normal) implements Spot {}

  /** A straight edge between two corners. */
  record EdgeSpot(Body body, Vec at, Vec from, Vec to) implements Spot {
    /** Unit direction. */
    public Vec along() {
      return to.minus(from).unit();
    }
  }

  /**
   * What lies at a point of a body: an edge if one is near, else the face.
   *
   * @param body where it now stands
   * @param point on its surface, as found by looking: within rounding of it
   * @param reach how near an edge has to be, mm
   */
  static Spot at(Body body, Vec point, double reach) {
    Mesh mesh = body.mesh();
    int nearest = nearestTriangle(mesh, point);
    Vec normal = SpotSearch.normal(mesh, nearest);
    Vec on = point.minus(normal.scale(point.minus(corner(mesh, nearest, 0)).dot(normal)));
    return SpotSearch.edge(mesh, on, reach)
        .<Spot>map(e -> new EdgeSpot(body, SpotSearch.onto(e[0], e[1], on), e[0], e[1]))
        .orElse(new FaceSpot(body, on, normal));
  }

  private static int nearestTriangle(Mesh mesh, Vec point) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      double off = SpotSearch.distance(mesh, t, point);
      if (off < least) {
        least = off;
        best = t;
      }
    }
    return best;
  }

  private static Vec corner(Mesh mesh, int triangle, int k) {
    return mesh.vertex(mesh.corner(triangle, k));
  }
}
