package sawstead.squaring;

/**
 * How far the fence is off square to the blade.
 *
 * @param error radians; positive when the fence is turned counter-clockwise seen from above, its
 *     right end too far from the operator
 * @param uncertainty standard uncertainty of the error, radians
 */
public record Squareness(double error, double uncertainty) {
  /** Coverage factor: plus or minus twice the standard uncertainty holds about 95 in 100. */
  public static final double COVERAGE = 2;

  /** Refuses what is no number. */
  public Squareness {
    if (!Double.isFinite(error) || !(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
      throw new IllegalArgumentException("no angle: " + error + " +- " + uncertainty);
    }
  }

  /** The error in degrees. */
  public double degrees() {
    return Math.toDegrees(error);
  }

  /** Whether the error cannot be told from none with what was measured. */
  public boolean isNoise() {
    return Math.abs(error) <= COVERAGE * uncertainty;
  }

  /** How far a cut across a board runs out of square, mm. */
  public double over(double board) {
    return board * Math.abs(Math.tan(error));
  }
}
