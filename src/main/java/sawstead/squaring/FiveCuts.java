package sawstead.squaring;

/**
 * The five-cut method: four sides of a board are cut, each with the side cut before against the
 * fence; the fifth cut takes a strip off along the first. Each corner is 90 degrees + e, so the
 * strip's sides are 4 e out of parallel (REF-FIV-01): near - far = L tan 4 e.
 *
 * <p>A board that stays to the left of the blade has its fresh side on its right, and is turned
 * clockwise to bring it to the fence; its corner between fence and blade measures 90 degrees plus
 * the fence's error, so the strip is wider at the fence when the error is positive. To the right of
 * the blade all is mirrored: turned counter-clockwise, and the signs change.
 *
 * @param stays the side of the blade on which the board stays
 * @param aEnd which end of the strip is called A
 * @param a width of the strip at A
 * @param b width of the strip at its other end
 * @param length between the two places, mm
 */
public record FiveCuts(Hand stays, StripEnd aEnd, Reading a, Reading b, double length) {
  /** Refuses a strip without length. */
  public FiveCuts {
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException("the strip has no length: " + length);
    }
  }

  /** The fence's error, with its uncertainty sqrt(u(A)^2 + u(B)^2) / (4 L) (REF-FIV-04). */
  public Squareness squareness() {
    double difference = aEnd.sign() * (a.mean() - b.mean());
    double error = stays.sign() * Math.atan(difference / length) / 4;
    double u = Math.hypot(a.uncertainty(), b.uncertainty()) / (4 * length);
    return new Squareness(error, u);
  }
}
