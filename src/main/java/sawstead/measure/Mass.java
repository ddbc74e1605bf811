package sawstead.measure;

/**
 * A mass. One pound is exactly 0.45359237 kg, one ounce a sixteenth of it (international yard and
 * pound agreement, 1959).
 *
 * @param kilograms not negative
 */
public record Mass(double kilograms) {

  private static final double KILOGRAMS_PER_POUND = 0.45359237;

  /** Refuses NaN, infinities and negative masses. */
  public Mass {
    if (!Double.isFinite(kilograms) || kilograms < 0) {
      throw new IllegalArgumentException("a mass must be a finite number of kilograms, 0 or more");
    }
  }

  /** A mass of so many kilograms. */
  public static Mass ofKilograms(double kilograms) {
    return new Mass(kilograms);
  }

  /** A mass of so many pounds. */
  public static Mass ofPounds(double pounds) {
    return new Mass(pounds * KILOGRAMS_PER_POUND);
  }

  /** The same mass in pounds. */
  public double pounds() {
    return kilograms / KILOGRAMS_PER_POUND;
  }
}
