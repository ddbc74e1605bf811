package sawstead.station.unit;

import sawstead.brief.HandWheel;
import sawstead.brief.Saw;
import sawstead.brief.Side;

/**
 * Where a hand-wheel at the saw's front goes while the blade tilts, seen by the operator: a disc
 * whose middle turns about the line of the table's top in the blade plane. Lengths mm, station
 * frame.
 *
 * @param saw as measured; its wheel is at the front
 * @param top height of the table
 */
record WheelSwing(Saw saw, double top) {

  /** Between two tilts that are looked at, degrees: the disc then moves by less than 3 mm. */
  private static final double STEP = 0.5;

  /**
   * How near it comes to something at its left, or at its right.
   *
   * @param degrees of the greatest tilt
   * @param low z of the thing's lower end
   * @param high z of its upper end
   * @param air round the wheel
   * @param fromLeft whether the thing is at the wheel's left
   * @return the least x (or the greatest) that wheel and air take up between those heights;
   *     infinite where they take up none
   */
  double reach(double degrees, double low, double high, double air, boolean fromLeft) {
    HandWheel wheel = saw.wheel();
    double radius = wheel.diameter().nominal() / 2 + air;
    double sense = saw.tilt().side() == Side.RIGHT ? -1 : 1;
    double x = wheel.at().nominal();
    double below = wheel.below().nominal();
    double found = fromLeft ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    int steps = (int) Math.ceil(degrees / STEP);
    for (int i = 0; i <= steps; i++) {
      double angle = steps == 0 ? 0 : Math.toRadians(degrees * i / steps) * sense;
      double middle = x * Math.cos(angle) + below * Math.sin(angle);
      double z = top + x * Math.sin(angle) - below * Math.cos(angle);
      double off = Math.max(0, Math.max(low - z, z - high));
      if (off < radius) {
        double half = Math.sqrt(radius * radius - off * off);
        found = fromLeft ? Math.min(found, middle - half) : Math.max(found, middle + half);
      }
    }
    return found;
  }
}
