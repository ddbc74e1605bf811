package sawstead.drawing.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Text of a DXF file: pairs of lines, a group code and a value.
 *
 * <p>Numbers are written in plain decimals, to {@value #DECIMALS} places: an exponent is a thing
 * that some readers stumble over.
 */
final class Tags {
  private static final int DECIMALS = 12;

  private final StringBuilder text = new StringBuilder();
  private final DxfVersion version;

  Tags(DxfVersion version) {
    this.version = version;
  }

  DxfVersion version() {
    return version;
  }

  Tags put(int code, String value) {
    text.append(code).append('\n').append(value).append('\n');
    return this;
  }

  Tags put(int code, int value) {
    return put(code, Integer.toString(value));
  }

  Tags put(int code, double value) {
    return put(code, decimal(value));
  }

  /** A point in the plane: codes {@code code}, {@code code} + 10 and a zero at + 20. */
  Tags putPoint(int code, double x, double y) {
    return put(code, x).put(code + 10, y).put(code + 20, 0.0);
  }

  /** A point with two coordinates only, as light polylines and views have it. */
  Tags putFlatPoint(int code, double x, double y) {
    return put(code, x).put(code + 10, y);
  }

  /** A subclass marker, in versions that have them. */
  Tags putClass(String name) {
    return version.isLinked() ? put(100, name) : this;
  }

  void append(Tags other) {
    text.append(other.text);
  }

  @Override
  public String toString() {
    return text.toString();
  }

  static String decimal(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    if (rounded.signum() == 0) {
      return "0.0";
    }
    BigDecimal plain = rounded.stripTrailingZeros();
    return plain.scale() <= 0 ? plain.toPlainString() + ".0" : plain.toPlainString();
  }
}
