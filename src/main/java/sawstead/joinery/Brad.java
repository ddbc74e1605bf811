package sawstead.joinery;

/**
 * A brad at hand.
 *
 * @param length mm
 * @param diameter mm
 */
public record Brad(double length, double diameter) {
  /** What most people load: 18 gauge, 35 mm (common practice, no source). */
  public static final Brad USUAL = new Brad(35, 1.2);

  /** Refuses sizes that are none. */
  public Brad {
    if (!(length > 0 && diameter > 0) || Double.isInfinite(length + diameter)) {
      throw new JoineryException(
          "a brad needs a length and a diameter of more than 0 mm: " + length + ", " + diameter);
    }
  }
}
