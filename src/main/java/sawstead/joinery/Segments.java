package sawstead.joinery;

import sawstead.solid.Vec;

/** Least distances between points and segments, mm. A segment may have no length. */
final class Segments {
  private Segments() {}

  /** Distance from a point to the segment from p to q. */
  static double distance(Vec point, Vec p, Vec q) {
    Vec run = q.minus(p);
    double square = run.dot(run);
    double t = square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(p).dot(run) / square));
    return point.distance(p.plus(run.scale(t)));
  }

  /**
   * Distance between two segments. The squared distance is a convex quadratic over the unit square
   * of the two parameters: its least value lies where both derivatives vanish, if that is inside,
   * else on the rim, where one parameter is an end.
   */
  static double distance(Vec p, Vec q, Vec r, Vec s) {
    double least =
        Math.min(
            Math.min(distance(p, r, s), distance(q, r, s)),
            Math.min(distance(r, p, q), distance(s, p, q)));
    Vec d = q.minus(p);
    Vec e = s.minus(r);
    Vec f = p.minus(r);
    double dd = d.dot(d);
    double ee = e.dot(e);
    double de = d.dot(e);
    double scale = dd * ee - de * de;
    if (scale > 0) {
      double t = (de * e.dot(f) - ee * d.dot(f)) / scale;
      double u = (dd * e.dot(f) - de * d.dot(f)) / scale;
      if (t > 0 && t < 1 && u > 0 && u < 1) {
        least = Math.min(least, p.plus(d.scale(t)).distance(r.plus(e.scale(u))));
      }
    }
    return least;
  }
}
