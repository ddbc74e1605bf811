package sawstead.drawing.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The unit of a drawing's coordinates and of the figures in its layer names (REF-FIL-04). */
public enum DxfUnit {
  /** Millimetres; depths in names to a thousandth. */
  MM("mm", 1, 4, 1, 3),
  /** Inches; depths in names to a ten-thousandth. */
  INCH("in", 25.4, 1, 0, 4);

  private final String symbol;
  private final double millimetres;
  private final int insertionUnits;
  private final int measurement;
  private final int decimals;

  DxfUnit(String symbol, double millimetres, int insertionUnits, int measurement, int decimals) {
    this.symbol = symbol;
    this.millimetres = millimetres;
    this.insertionUnits = insertionUnits;
    this.measurement = measurement;
    this.decimals = decimals;
  }

  /** {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** Value of {@code $INSUNITS}. */
  int insertionUnits() {
    return insertionUnits;
  }

  /** Value of {@code $MEASUREMENT}. */
  int measurement() {
    return measurement;
  }

  /** A length in mm, in this unit. */
  double from(double length) {
    return length / millimetres;
  }

  /** A length in mm as this unit's figure, without needless zeros: {@code 9.525}, {@code 0.375}. */
  public String figure(double length) {
    BigDecimal rounded =
        BigDecimal.valueOf(from(length)).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A length in mm within a layer's name, where old versions allow no point: {@code 88mm9}. */
  public String inName(double length) {
    String figure = figure(length);
    int point = figure.indexOf('.');
    return point < 0
        ? figure + symbol
        : figure.substring(0, point) + symbol + figure.substring(point + 1);
  }
}
