package sawstead.joinery;

import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * One of the six directions parallel to a station axis.
 *
 * @param axis parallel to it
 * @param plus true if towards growing coordinates
 */
record Heading(Axis axis, boolean plus) {
  private static final double STRAIGHT = 1 - 1e-12;

  /**
   * The heading of a unit direction.
   *
   * @throws JoineryException if the direction is not parallel to an axis
   */
  static Heading of(Vec direction) {
    for (Axis axis : Axis.values()) {
      if (Math.abs(direction.along(axis)) > STRAIGHT) {
        return new Heading(axis, direction.along(axis) > 0);
      }
    }
    throw new JoineryException("direction " + direction + " is not parallel to a station axis");
  }

  Vec unit() {
    return axis.unit().scale(plus ? 1 : -1);
  }

  Heading opposite() {
    return new Heading(axis, !plus);
  }

  /** Coordinate of the side of a box that looks this way. */
  double sideOf(Box box) {
    return (plus ? box.high() : box.low()).along(axis);
  }

  /** The point with its coordinate along an axis replaced. */
  static Vec with(Vec point, Axis axis, double value) {
    return new Vec(
        axis == Axis.X ? value : point.x(),
        axis == Axis.Y ? value : point.y(),
        axis == Axis.Z ? value : point.z());
  }

  /** The box with its extent along an axis replaced. */
  static Box with(Box box, Axis axis, double low, double high) {
    return new Box(with(box.low(), axis, low), with(box.high(), axis, high));
  }

  /** The axis that is neither of two. */
  static Axis third(Axis one, Axis other) {
    for (Axis axis : Axis.values()) {
      if (axis != one && axis != other) {
        return axis;
      }
    }
    throw new IllegalStateException("three axes");
  }
}
