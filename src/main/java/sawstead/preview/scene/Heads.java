package sawstead.preview.scene;

import java.util.List;
import sawstead.joinery.Fastener;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/** The heads of screws and bolts as flat discs, a hair proud so that they are seen. */
final class Heads {
  private static final int CORNERS = 12;
  private static final double PROUD = 0.4;

  private Heads() {}

  /** All heads in one mesh, in the frame that {@code toLocal} leads to. */
  static Triangles of(List<Fastener> fasteners, Placement toLocal) {
    Triangles discs = new Triangles();
    for (Fastener fastener : fasteners) {
      double radius = Math.max(fastener.headDiameter(), fastener.diameter()) / 2;
      Vec out = toLocal.turn(fastener.axis()).scale(-1);
      Vec centre = toLocal.apply(fastener.at()).plus(out.scale(PROUD));
      Vec helper = Math.abs(out.x()) < 0.9 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
      Vec p = out.cross(helper).unit();
      Vec q = out.cross(p);
      for (int i = 0; i < CORNERS; i++) {
        discs.corner(centre, 0, 0);
        discs.corner(rim(centre, p, q, radius, i), 0, 0);
        discs.corner(rim(centre, p, q, radius, i + 1), 0, 0);
      }
    }
    return discs;
  }

  private static Vec rim(Vec centre, Vec p, Vec q, double radius, int corner) {
    double a = 2 * Math.PI * corner / CORNERS;
    return centre.plus(p.scale(radius * Math.cos(a))).plus(q.scale(radius * Math.sin(a)));
  }
}
