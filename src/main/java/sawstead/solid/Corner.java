package sawstead.solid;

/**
 * A corner of an outline, with the shape of the edge that leaves it.
 *
 * @param u along the grain, mm
 * @param v across the grain, mm
 * @param bulge tangent of a quarter of the arc's angle from this corner to the next, positive when
 *     the arc runs counter-clockwise, 0 for a straight edge (as in neutral drawing exchange: a half
 *     circle has 1, a quarter circle 0.41421...)
 */
public record Corner(double u, double v, double bulge) {
  /** Greatest distance of a corner from the local origin, mm. */
  public static final double REACH = 100_000;

  /** Refuses what is not a number or lies beyond {@link #REACH}. */
  public Corner {
    if (!Double.isFinite(u) || !Double.isFinite(v) || !Double.isFinite(bulge)) {
      throw new OutlineException(
          "a corner needs finite numbers, found (" + u + ", " + v + ") with bulge " + bulge);
    }
    if (Math.abs(u) > REACH || Math.abs(v) > REACH) {
      throw new OutlineException(
          "corner (" + u + ", " + v + ") mm lies more than 100 m from the origin of its panel");
    }
    u += 0.0;
    v += 0.0;
    bulge += 0.0;
  }

  /** A corner that a straight edge leaves. */
  public static Corner of(double u, double v) {
    return new Corner(u, v, 0);
  }

  double distance(Corner other) {
    return Math.hypot(other.u - u, other.v - v);
  }

  Corner withBulge(double other) {
    return new Corner(u, v, other);
  }
}
