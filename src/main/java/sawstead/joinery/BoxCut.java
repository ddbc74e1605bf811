package sawstead.joinery;

import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Recess;
import sawstead.solid.Vec;

/** Turns an axis-parallel box of air into the feature that it leaves in a board. */
final class BoxCut {
  private BoxCut() {}

  static Feature in(Board board, Box air, String operation) {
    if (!board.isAxisParallel()) {
      throw new JoineryException(board.id() + " is turned: no axis-parallel box can be cut in it");
    }
    Vec one = board.local(air.low());
    Vec other = board.local(air.high());
    Box plan = board.outline().bounds();
    double u0 = clipped(Math.min(one.x(), other.x()), plan.low().x(), plan.high().x());
    double u1 = clipped(Math.max(one.x(), other.x()), plan.low().x(), plan.high().x());
    double v0 = clipped(Math.min(one.y(), other.y()), plan.low().y(), plan.high().y());
    double v1 = clipped(Math.max(one.y(), other.y()), plan.low().y(), plan.high().y());
    double w0 = clipped(Math.min(one.z(), other.z()), 0, board.thickness());
    double w1 = clipped(Math.max(one.z(), other.z()), 0, board.thickness());
    if (u1 <= u0 || v1 <= v0 || w1 <= w0) {
      throw new JoineryException("a " + operation + " in " + air + " misses " + board.id());
    }
    Outline outline = Outline.rectangle(u0, v0, u1, v1);
    boolean back = w0 == 0;
    boolean front = w1 == board.thickness();
    if (back && front) {
      return new Opening(outline);
    }
    if (front) {
      return new Recess(operation, outline, w1 - w0, Face.FRONT);
    }
    if (back) {
      return new Recess(operation, outline, w1, Face.BACK);
    }
    throw new JoineryException(
        "a "
            + operation
            + " in "
            + board.id()
            + " from "
            + w0
            + " to "
            + w1
            + " mm of its thickness reaches neither face");
  }

  /** Within the limits, and on them when nearer than {@link Board#SAME}. */
  private static double clipped(double value, double low, double high) {
    return value < low + Board.SAME ? low : value > high - Board.SAME ? high : value;
  }
}
