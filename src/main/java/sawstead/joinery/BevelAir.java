package sawstead.joinery;

import sawstead.solid.Bevel;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/** Air of a bevel: a wedge with the bevel's two legs, as long as the board can be. */
final class BevelAir implements Air {
  private final PrismAir wedge;
  private final Placement frame;

  /**
   * The wedge of a bevel. Its own frame has the first axis across the face, the second down the
   * edge, the third along it.
   */
  BevelAir(Bevel bevel, Board board) {
    Vec along = new Vec(bevel.toU() - bevel.fromU(), bevel.toV() - bevel.fromV(), 0).unit();
    boolean front = bevel.face() == Face.FRONT;
    Vec corner = new Vec(bevel.fromU(), bevel.fromV(), front ? board.thickness() : 0);
    frame = Placement.of(corner, new Vec(-along.y(), along.x(), 0), new Vec(0, 0, front ? -1 : 1));
    Box plan = board.outline().bounds();
    double reach = plan.size().length() + corner.distance(plan.centre());
    wedge =
        new PrismAir(
            Outline.polygon(0, 0, bevel.acrossFace(), 0, 0, bevel.downEdge()), -reach, reach);
  }

  @Override
  public double distance(Vec from, Vec to) {
    Placement back = frame.inverse();
    return wedge.distance(back.apply(from), back.apply(to));
  }

  @Override
  public boolean isBeyond(Vec from, Vec to, double distance) {
    Placement back = frame.inverse();
    return wedge.isBeyond(back.apply(from), back.apply(to), distance);
  }

  @Override
  public Body body(String id, Placement board) {
    return wedge.body(id, board.after(frame));
  }
}
