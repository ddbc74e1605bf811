package sawstead.measure;

/**
 * An angle, kept in degrees because that is what is dialled on a saw.
 *
 * @param degrees any finite number
 */
public record Angle(double degrees) {

  /** Refuses NaN and infinities. */
  public Angle {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("an angle must be a finite number of degrees");
    }
  }

  /** An angle of so many degrees. */
  public static Angle ofDegrees(double degrees) {
    return new Angle(degrees);
  }

  /** The same angle in radians. */
  public double radians() {
    return Math.toRadians(degrees);
  }
}
