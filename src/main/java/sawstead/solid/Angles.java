package sawstead.solid;

/** Sine and cosine of degrees, exact at multiples of 90. */
final class Angles {
  private Angles() {}

  /** Sine of an angle in degrees. */
  static double sin(double degrees) {
    return cos(degrees - 90);
  }

  /** Cosine of an angle in degrees. */
  static double cos(double degrees) {
    if (!Double.isFinite(degrees)) {
      throw new SolidException("an angle must be a finite number of degrees, found " + degrees);
    }
    double turn = Math.abs(Math.IEEEremainder(degrees, 360));
    if (turn > 90) {
      return -acute(180 - turn);
    }
    return acute(turn);
  }

  private static double acute(double degrees) {
    if (degrees == 90) {
      return 0;
    }
    // Beyond 45 degrees the sine of the rest is the better conditioned of the two.
    return degrees <= 45
        ? Math.cos(Math.toRadians(degrees))
        : Math.sin(Math.toRadians(90 - degrees));
  }
}
