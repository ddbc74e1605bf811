package sawstead.measure;

import java.math.BigDecimal;
import java.util.Optional;

/** The unit that plain numbers of a file are in. */
public enum Unit {
  /** Millimetres. */
  MM("mm", "1"),
  /** Inches of exactly 25.4 mm (international yard and pound agreement, 1959; REF-NUM-01). */
  INCH("inch", "25.4");

  private final String key;
  private final BigDecimal factor;

  Unit(String key, String factor) {
    this.key = key;
    this.factor = new BigDecimal(factor);
  }

  /** The word that a brief uses for this unit: {@code mm} or {@code inch}. */
  public String key() {
    return key;
  }

  /** Millimetres in one of this unit. */
  public double millimetres() {
    return factor.doubleValue();
  }

  /** The unit of a brief's word, if it is one. */
  public static Optional<Unit> of(String key) {
    for (Unit unit : values()) {
      if (unit.key.equals(key)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** Exact millimetres in one of this unit. */
  BigDecimal factor() {
    return factor;
  }
}
