package sawstead.preview.form;

import java.util.Optional;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;

/**
 * What a slider of a length may run over: half to one and a half times what is written, and a
 * hand's breadth at least, within what the schema accepts; in marks of a rule.
 *
 * @param low mm
 * @param high mm
 * @param at mm
 * @param mark between two places of the slider, mm
 * @param band the rest of what is written, such as {@code ± 1/32}
 * @param unit of the brief
 */
record Range(double low, double high, double at, double mark, String band, Unit unit) {
  private static final double HAND = 100;
  private static final double INCH = 25.4;

  /**
   * The range of a length as written.
   *
   * @param min least that the schema accepts, mm
   * @param max greatest that the schema accepts, mm
   * @return empty if the text is no length in the brief's unit
   */
  static Optional<Range> of(String text, Unit unit, double min, double max) {
    int end = Steps.band(text);
    String plain = text.substring(0, end).strip();
    if (!plain.matches("[-0-9./ ]+")) {
      return Optional.empty();
    }
    try {
      double at = LengthText.parse(plain, unit).nominal();
      double reach = Math.max(Math.abs(at) / 2, Math.min(HAND, (max - min) / 4));
      double fine = unit == Unit.MM ? 1 : INCH / 16;
      double mark = reach < 12 ? fine / (unit == Unit.MM ? 10 : 2) : fine;
      String band = end < text.length() ? " " + text.substring(end).strip() : "";
      return Optional.of(
          new Range(Math.max(min, at - reach), Math.min(max, at + reach), at, mark, band, unit));
    } catch (AmountFormatException notALength) {
      return Optional.empty();
    }
  }

  /** What the brief says when the thumb is there: the nearest mark, with the band as it was. */
  String text(double thumb) {
    double marked = Math.max(low, Math.min(high, Math.rint(thumb / mark) * mark));
    LengthFormat format = unit == Unit.MM ? LengthFormat.millimetres() : LengthFormat.inches(32);
    return format.text(marked) + band;
  }
}
