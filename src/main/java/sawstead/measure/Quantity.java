package sawstead.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number as written, exact: {@code 34-3/4} is 139 over 4.
 *
 * @param numerator not negative
 * @param denominator positive
 */
record Quantity(BigDecimal numerator, BigDecimal denominator) {

  /** 34 significant digits: far more than a double has, so that the one later rounding decides. */
  private static final MathContext PRECISION = MathContext.DECIMAL128;

  /** The quantity in the base unit, where {@code factor} base units are one of its own. */
  BigDecimal times(BigDecimal factor) {
    return numerator.multiply(factor).divide(denominator, PRECISION);
  }
}
