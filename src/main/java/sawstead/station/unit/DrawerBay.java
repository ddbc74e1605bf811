package sawstead.station.unit;

import sawstead.brief.Side;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * The clear space that a drawer runs in. Inside it a place is told by how far it lies behind the
 * opening ({@code along}), from the side with the lower coordinate ({@code across}) and above its
 * floor. Lengths mm, station frame.
 *
 * @param space the clear space
 * @param out the side by which the drawer comes out: FRONT, REAR, LEFT or RIGHT
 */
record DrawerBay(Box space, Side out) {

  /** Whether it comes out along y. */
  boolean runsAlongY() {
    return out == Side.FRONT || out == Side.REAR;
  }

  Axis along() {
    return runsAlongY() ? Axis.Y : Axis.X;
  }

  Axis across() {
    return runsAlongY() ? Axis.X : Axis.Y;
  }

  double depth() {
    return space.size().along(along());
  }

  double width() {
    return space.size().along(across());
  }

  double height() {
    return space.size().z();
  }

  /** The way out. */
  Vec direction() {
    boolean back = out == Side.FRONT || out == Side.LEFT;
    return along().unit().scale(back ? -1 : 1);
  }

  /** Whether growing coordinates lead out. */
  boolean opensTowardsPlus() {
    return out == Side.REAR || out == Side.RIGHT;
  }

  /** A box by its place in the bay. */
  Box box(double along0, double along1, double across0, double across1, double low, double high) {
    double a0;
    double a1;
    if (opensTowardsPlus()) {
      double end = space.high().along(along());
      a0 = end - along1;
      a1 = end - along0;
    } else {
      double end = space.low().along(along());
      a0 = end + along0;
      a1 = end + along1;
    }
    double side = space.low().along(across());
    double floor = space.low().z();
    return runsAlongY()
        ? new Box(
            new Vec(side + across0, a0, floor + low), new Vec(side + across1, a1, floor + high))
        : new Box(
            new Vec(a0, side + across0, floor + low), new Vec(a1, side + across1, floor + high));
  }
}
