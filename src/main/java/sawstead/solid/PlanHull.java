package sawstead.solid;

import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The convex hull of a plan, raised over the whole height of its slabs. */
final class PlanHull {
  private PlanHull() {}

  static Piece of(Slabs slabs) {
    Plan plan = slabs.plan();
    Coordinate[] points = new Coordinate[plan.triangles().length];
    for (int i = 0; i < points.length; i++) {
      int vertex = plan.triangles()[i];
      points[i] = new Coordinate(plan.u(vertex), plan.v(vertex));
    }
    Coordinate[] ring =
        new ConvexHull(points, new GeometryFactory()).getConvexHull().norm().getCoordinates();
    int n = ring.length - 1;
    double[] uv = new double[2 * n];
    for (int i = 0; i < n; i++) {
      // A normal polygon's shell runs clockwise.
      uv[2 * i] = ring[n - i].x;
      uv[2 * i + 1] = ring[n - i].y;
    }
    return Piece.prism(uv, slabs.heights()[0], slabs.heights()[slabs.levels()]);
  }
}
