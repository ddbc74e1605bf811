package sawstead.layout;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as the shop reads them, whatever the language of the machine. */
final class Lengths {
  private Lengths() {}

  /** At most three decimals, none that are zero, always with a point: 2440, 396.875, 3.2. */
  static String text(double mm) {
    if (Double.isNaN(mm) || Double.isInfinite(mm)) {
      return Double.toString(mm);
    }
    BigDecimal rounded = BigDecimal.valueOf(mm).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
