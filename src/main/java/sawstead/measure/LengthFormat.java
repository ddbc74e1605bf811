package sawstead.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Writes lengths (mm) in the user's units. Ties go to the even neighbour (half to even, as
 * test-laboratory practice has it, REF-NUM-04), applied to the shortest decimal of the double:
 * 3.965 becomes 3.96 because 3.965 is what was meant, whatever its binary neighbour. What {@link
 * #text} writes, {@link LengthText} reads back with the unit of this format as that of the file.
 *
 * @param unit the unit of the text
 * @param finest divisions of an inch, 1 to 1024; no part in millimetres, and 1 there
 */
public record LengthFormat(Unit unit, int finest) {

  /** The usual rule in a workshop of inches. */
  private static final int USUAL_FINEST = 32;

  private static final int DECIMALS_OF_MM = 2;

  private static final double MM_PER_INCH = 25.4;

  /** Below this a fraction would be rounded beyond use: three marks of 1/32 in, mm. */
  private static final double FINE = 2.4;

  /** Rounding that a fraction may hide before it is marked, mm. */
  private static final double EXACT = 0.02;

  /** Refuses divisions that no rule has. */
  public LengthFormat {
    if (unit == null || finest < 1 || finest > 1024) {
      throw new IllegalArgumentException("an inch is divided into 1 to 1024 parts");
    }
  }

  /** Millimetres with at most two decimals: {@code 470}, {@code 470.5}. */
  public static LengthFormat millimetres() {
    return new LengthFormat(Unit.MM, 1);
  }

  /** Inches with fractions: {@code 18-1/2}; {@code finest} is the smallest mark, 32 for 1/32. */
  public static LengthFormat inches(int finest) {
    return new LengthFormat(Unit.INCH, finest);
  }

  /** The usual format of a file's unit: two decimals of a millimetre, or 1/32 in. */
  public static LengthFormat of(Unit unit) {
    return unit == Unit.MM ? millimetres() : inches(USUAL_FINEST);
  }

  /** The length without its unit. */
  public String text(double millimetres) {
    return unit == Unit.MM
        ? decimal(millimetres).toPlainString()
        : InchFraction.nearest(millimetres, finest).text();
  }

  /** The length with its unit: {@code 470.5 mm}, {@code 18-1/2 in}. */
  public String withUnit(double millimetres) {
    return text(millimetres) + (unit == Unit.MM ? " mm" : " in");
  }

  /**
   * The length with its unit, and thousands set off: {@code 3,000,000 mm}. For sentences only:
   * {@link LengthText} refuses commas.
   */
  public String inWords(double millimetres) {
    if (unit == Unit.MM) {
      return new DecimalFormat("#,##0.##", DecimalFormatSymbols.getInstance(Locale.ROOT))
              .format(decimal(millimetres))
          + " mm";
    }
    return withUnit(millimetres);
  }

  /**
   * The length with its unit, as near as it can be told: in inches {@code ~} stands in front when
   * the fraction is only the nearest one, and what is too small for a mark on a rule is written in
   * thousandths, as feeler gauges are: {@code 0.053 in}.
   */
  public String near(double millimetres) {
    if (unit == Unit.MM || !Double.isFinite(millimetres)) {
      return withUnit(millimetres);
    }
    if (Math.abs(millimetres) < FINE) {
      return millimetres == 0
          ? withUnit(0)
          : String.format(Locale.ROOT, "%.3f in", millimetres / MM_PER_INCH);
    }
    return (Math.abs(residual(millimetres)) > EXACT ? "~" : "") + withUnit(millimetres);
  }

  /** What the text leaves out, in mm: the length less what was written. */
  public double residual(double millimetres) {
    return unit == Unit.MM
        ? BigDecimal.valueOf(millimetres).subtract(decimal(millimetres)).doubleValue()
        : InchFraction.nearest(millimetres, finest).residual();
  }

  private static BigDecimal decimal(double millimetres) {
    BigDecimal rounded =
        BigDecimal.valueOf(millimetres).setScale(DECIMALS_OF_MM, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0
        ? BigDecimal.ZERO
        : new BigDecimal(rounded.stripTrailingZeros().toPlainString());
  }
}
