package sawstead.solid;

/**
 * The circular edge between two corners.
 *
 * <p>With chord c and bulge b: radius c (1 + b^2) / (4 |b|), angle 4 arctan b, sagitta b c / 2.
 *
 * @param centreU centre, mm
 * @param centreV centre, mm
 * @param radius mm
 * @param start direction from the centre to the first corner, radians
 * @param angle swept from the first corner to the second, radians, positive counter-clockwise
 */
record Arc(double centreU, double centreV, double radius, double start, double angle) {
  static Arc between(Corner from, Corner to) {
    double b = from.bulge();
    double du = to.u() - from.u();
    double dv = to.v() - from.v();
    // The centre lies on the bisector, (1 - b^2) / (4 b) chords to the left of the chord.
    double off = (1 - b * b) / (4 * b);
    double cu = (from.u() + to.u()) / 2 - dv * off;
    double cv = (from.v() + to.v()) / 2 + du * off;
    double radius = Math.hypot(du, dv) * (1 + b * b) / (4 * Math.abs(b));
    double start = Math.atan2(from.v() - cv, from.u() - cu);
    return new Arc(cu, cv, radius, start, 4 * Math.atan(b));
  }

  /** Area between chord and arc, mm2, positive where the arc adds to a counter-clockwise ring. */
  double segmentArea() {
    return radius * radius * (angle - Math.sin(angle)) / 2;
  }

  double length() {
    return radius * Math.abs(angle);
  }

  double u(double direction) {
    return centreU + radius * Math.cos(direction);
  }

  double v(double direction) {
    return centreV + radius * Math.sin(direction);
  }

  /** True if the direction (radians, any turn) lies strictly within the arc. */
  boolean spans(double direction) {
    double way = angle > 0 ? direction - start : start - direction;
    way -= 2 * Math.PI * Math.floor(way / (2 * Math.PI));
    return way > 0 && way < Math.abs(angle);
  }

  /** True if both are parts of one circle, run through the same way. */
  boolean continues(Arc next) {
    double near = 1e-9 * Math.max(1, radius);
    return Math.signum(angle) == Math.signum(next.angle)
        && Math.hypot(centreU - next.centreU, centreV - next.centreV) <= near
        && Math.abs(radius - next.radius) <= near;
  }

  /** This arc and the next one on the same circle as one arc. */
  Arc joined(Arc next) {
    return new Arc(centreU, centreV, radius, start, angle + next.angle);
  }
}
