package sawstead.export.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Doubles as decimal numbers: in full, but without the digits that only rounding made, so that a
 * sum of 12.7 does not come out as 12.700000000000003.
 *
 * <p>The shortest decimal near a value is taken when it lies within {@link #NOISE} (absolute, and
 * of the value) of it; anything else keeps all its digits.
 */
final class Numbers {
  /** What a few sums and products of doubles may be off, absolute and as a share of the value. */
  static final double NOISE = 1e-14;

  /** Absolute noise of coordinates: sums of lengths up to metres, in mm. */
  private static final double NOISE_OF_SUMS = 1e-12;

  private static final MathContext SHORT = new MathContext(13, RoundingMode.HALF_EVEN);

  private static final int DECIMALS = 10;

  private Numbers() {}

  /**
   * The number to write.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  static BigDecimal of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a report holds finite numbers only, found " + value);
    }
    BigDecimal full = new BigDecimal(Double.toString(value));
    BigDecimal near = full.round(SHORT);
    if (near.scale() > DECIMALS) {
      near = near.setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
    double off = Math.abs(near.doubleValue() - value);
    return plain(off <= Math.max(NOISE_OF_SUMS, NOISE * Math.abs(value)) ? near : full);
  }

  private static BigDecimal plain(BigDecimal value) {
    if (value.signum() == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal bare = value.stripTrailingZeros();
    return bare.scale() < 0 ? bare.setScale(0) : bare;
  }
}
