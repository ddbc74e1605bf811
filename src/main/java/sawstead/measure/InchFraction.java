package sawstead.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A length on the marks of an inch rule: {@code 18-1/2}, and by how much the length is off that
 * mark.
 *
 * <p>Invariant: {@code length = (negative ? -1 : 1) * (whole + numerator / denominator) * 25.4 +
 * residual}, in mm.
 *
 * <p>A length midway between two marks goes to the one with the even count of {@code finest} (half
 * to even, REF-NUM-03): 1/64 in on a rule of 1/32 is 0, 3/64 in is 1/16.
 *
 * @param negative whether the mark lies below zero
 * @param whole whole inches
 * @param numerator less than the denominator; in lowest terms
 * @param denominator 1 where there is no fraction
 * @param residual mm that the length has beyond the mark (REF-NUM-02); negative if it falls short
 */
public record InchFraction(
    boolean negative, long whole, int numerator, int denominator, double residual) {

  private static final BigDecimal INCH = Unit.INCH.factor();
  private static final MathContext PRECISE = new MathContext(50, RoundingMode.HALF_EVEN);

  /**
   * The nearest mark to a length.
   *
   * @param millimetres a finite length
   * @param finest divisions of an inch, for example 32; 1 to 1024
   * @throws IllegalArgumentException if either is out of range
   */
  public static InchFraction nearest(double millimetres, int finest) {
    if (!Double.isFinite(millimetres) || Math.abs(millimetres) > 1e12) {
      throw new IllegalArgumentException("a length must be finite and below 10^12 mm");
    }
    if (finest < 1 || finest > 1024) {
      throw new IllegalArgumentException("an inch is divided into 1 to 1024 parts");
    }
    BigDecimal length = BigDecimal.valueOf(millimetres);
    long marks =
        length
            .multiply(BigDecimal.valueOf(finest))
            .divide(INCH, PRECISE)
            .setScale(0, RoundingMode.HALF_EVEN)
            .longValueExact();
    BigDecimal there =
        BigDecimal.valueOf(marks).multiply(INCH).divide(BigDecimal.valueOf(finest), PRECISE);
    long size = Math.abs(marks);
    int rest = (int) (size % finest);
    int common =
        rest == 0 ? finest : BigInteger.valueOf(rest).gcd(BigInteger.valueOf(finest)).intValue();
    return new InchFraction(
        marks < 0,
        size / finest,
        rest / common,
        finest / common,
        length.subtract(there).doubleValue());
  }

  /** As one writes it, without a unit: {@code 18-1/2}, {@code 3/4}, {@code -5}, {@code 0}. */
  public String text() {
    String sign = negative ? "-" : "";
    if (numerator == 0) {
      return sign + whole;
    }
    String fraction = numerator + "/" + denominator;
    return sign + (whole == 0 ? fraction : whole + "-" + fraction);
  }
}
