package sawstead.preview.form;

import java.util.Optional;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthFormatException;
import sawstead.measure.LengthText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/**
 * One step up or down a rule: a sixteenth of an inch or a millimetre; the band stays as written.
 */
final class Steps {
  private Steps() {}

  /**
   * The text of the next mark.
   *
   * @param text as written, with or without a band
   * @param unit of the brief
   * @param up towards the greater
   * @return empty if the text is no length, or a unit of its own is written
   */
  static Optional<String> next(String text, Unit unit, boolean up) {
    int band = band(text);
    String plain = text.substring(0, band).strip();
    if (!plain.matches("[-0-9./ ]+")) {
      return Optional.empty();
    }
    try {
      Parsed parsed = LengthText.parse(plain, unit);
      double step = unit == Unit.INCH ? 25.4 / 16 : 1;
      double mark = parsed.nominal() / step;
      double next = up ? Math.floor(mark + 1 + 1e-6) : Math.ceil(mark - 1 - 1e-6);
      LengthFormat format =
          unit == Unit.INCH ? LengthFormat.inches(16) : LengthFormat.millimetres();
      String rest = band < text.length() ? " " + text.substring(band).strip() : "";
      return Optional.of(format.text(next * step) + rest);
    } catch (LengthFormatException notALength) {
      return Optional.empty();
    }
  }

  /** Where the band of a text begins; its end if it has none. */
  static int band(String text) {
    for (String sign : new String[] {"\u00b1", "+-", "+"}) {
      int at = text.indexOf(sign);
      if (at > 0) {
        return at;
      }
    }
    return text.length();
  }
}
