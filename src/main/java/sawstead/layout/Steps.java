package sawstead.layout;

/**
 * Millimetres as whole micrometres, so that sums along a sheet are exact. Parts and blades are
 * rounded up and sheets down: a plan made in steps is possible in reality.
 */
final class Steps {
  private static final double PER_MM = 1000;

  /** A thousandth of a step: representation noise of decimal fractions, not a tolerance. */
  private static final double NOISE = 1e-3;

  private Steps() {}

  static int up(double mm) {
    return Math.toIntExact((long) Math.ceil(mm * PER_MM - NOISE));
  }

  static int down(double mm) {
    return Math.toIntExact((long) Math.floor(mm * PER_MM + NOISE));
  }

  static double mm(long steps) {
    return steps / PER_MM;
  }
}
