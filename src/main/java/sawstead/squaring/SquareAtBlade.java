package sawstead.squaring;

/**
 * A try square with its stock against the fence and its arm against the raised blade's plate
 * (unplugged, between two teeth): it touches at one end, and a gap shows at the other.
 *
 * @param side the side of the blade on which the arm lies
 * @param gapEnd the end of the contact at which the gap is
 * @param gap mm; 0 is written as the thinnest leaf that does not go in, as its band
 * @param gapBand how far the gap may be off either way, mm
 * @param length between touch and gap along the blade, mm
 * @param squareBand how far the square itself may be off over that length, mm; turn it over to see
 */
public record SquareAtBlade(
    Hand side, StripEnd gapEnd, double gap, double gapBand, double length, double squareBand) {
  /** Refuses sizes that are none. */
  public SquareAtBlade {
    if (!(gap >= 0 && gapBand >= 0 && squareBand >= 0 && length > 0)
        || Double.isInfinite(gap + gapBand + squareBand + length)) {
      throw new IllegalArgumentException("a gap is 0 or more, over a length of more than 0");
    }
  }

  /**
   * The fence's error. With a positive one the arm leans to the left away from the operator: on the
   * blade's left it touches near and gapes far.
   */
  public Squareness squareness() {
    double error = -side.sign() * gapEnd.sign() * Math.atan(gap / length);
    double u = Math.hypot(gapBand, squareBand) / Math.sqrt(3) / length;
    return new Squareness(error, u);
  }
}
