package sawstead.book;

import sawstead.solid.Axis;
import sawstead.solid.Vec;

/**
 * A view without perspective: parallels stay parallel, and what is farther is as large.
 *
 * @param right unit vector that points to the right on the page, station frame
 * @param up unit vector that points up on the page
 * @param toward unit vector that points at who looks
 */
record Camera(Vec right, Vec up, Vec toward) {
  private static final double ASIDE = Math.toRadians(32);
  private static final double ABOVE = Math.toRadians(24);

  /** From before the infeed side, turned to the right of the saw, a little above it. */
  static final Camera USUAL = at(ASIDE, ABOVE);

  /**
   * From where a thing is seen that comes along a direction: from its own side.
   *
   * @param direction in which it moves, station frame
   */
  static Camera seeing(Vec direction) {
    return switch (Axis.nearest(direction)) {
      case X -> at(direction.x() > 0 ? -2 * ASIDE : 2 * ASIDE, ABOVE);
      case Y -> at(direction.y() < 0 ? Math.PI - ASIDE : ASIDE, ABOVE);
      case Z -> at(ASIDE, direction.z() > 0 ? -ABOVE : ABOVE);
    };
  }

  private static Camera at(double aside, double above) {
    Vec toward =
        new Vec(
            Math.sin(aside) * Math.cos(above), -Math.cos(aside) * Math.cos(above), Math.sin(above));
    Vec right = new Vec(Math.cos(aside), Math.sin(aside), 0);
    return new Camera(right, toward.cross(right), toward);
  }

  /** Where a point is on the page, and how near to who looks: mm along right, up and toward. */
  Vec seen(Vec point) {
    return new Vec(point.dot(right), point.dot(up), point.dot(toward));
  }
}
