package sawstead.joinery;

import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * Everything within {@code radius} of the segment between two points, mm: a cylinder with round
 * ends. The frame is the caller's.
 */
record Rod(Vec from, Vec to, double radius) {

  /** Least distance between the surfaces, mm; negative when the rods meet. */
  double gap(Rod other) {
    return Segments.distance(from, to, other.from, other.to) - radius - other.radius;
  }

  /**
   * Whether the rods are apart, as far as the boxes around both can tell: true is certain, false
   * says nothing.
   */
  boolean isBeyond(Rod other) {
    double reach = radius + other.radius;
    return isBeyond(from.x(), to.x(), other.from.x(), other.to.x(), reach)
        || isBeyond(from.y(), to.y(), other.from.y(), other.to.y(), reach)
        || isBeyond(from.z(), to.z(), other.from.z(), other.to.z(), reach);
  }

  private static boolean isBeyond(double a, double b, double c, double d, double reach) {
    return Math.max(a, b) + reach < Math.min(c, d) || Math.max(c, d) + reach < Math.min(a, b);
  }

  /** The same rod, thicker by a margin all round. */
  Rod grown(double margin) {
    return new Rod(from, to, radius + margin);
  }

  /** This rod after a motion. */
  Rod moved(Placement by) {
    return new Rod(by.apply(from), by.apply(to), radius);
  }

  /**
   * A cylinder with flat ends at both points, its circle a polygon around the true one.
   *
   * @param id of the body
   * @param frame from this rod's frame to the station's
   */
  Body cylinder(String id, Placement frame) {
    Vec axis = to.minus(from).unit();
    Vec aside = Math.abs(axis.x()) < 0.5 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = aside.minus(axis.scale(aside.dot(axis))).unit();
    return new Body(
        id,
        Solids.cylinder(2 * radius, from.distance(to)),
        frame.after(new Placement(u, axis.cross(u), axis, from)));
  }
}
