package sawstead.measure;

import java.math.BigDecimal;
import java.util.Map;

/**
 * Reads a length as a woodworker writes it: {@code 34-3/4}, {@code 34 3/4 in}, {@code 3/4"}, {@code
 * 19.05 mm}, {@code 1' 6-1/2"}, {@code 34¾}; units mm, cm, m, in, ft; with a band if there is one:
 * {@code ± 1/32}, {@code +- 0.5}, {@code +0.5/-0.2 mm}. A leading minus is read (coordinates have
 * one); whether a length may be negative is for the caller to say.
 */
public final class LengthText {

  private static final UnitWords WORDS =
      new UnitWords(
          "a length",
          "mm, cm, m, in or ft",
          "for example 34-3/4 in, 34.75 in or 19.05 mm",
          Map.ofEntries(
              Map.entry("mm", UnitWords.Word.of("1", Unit.MM)),
              Map.entry("cm", UnitWords.Word.of("10", Unit.MM)),
              Map.entry("m", UnitWords.Word.of("1000", Unit.MM)),
              Map.entry("in", UnitWords.Word.of("25.4", Unit.INCH)),
              Map.entry("inch", UnitWords.Word.of("25.4", Unit.INCH)),
              Map.entry("inches", UnitWords.Word.of("25.4", Unit.INCH)),
              Map.entry("\"", UnitWords.Word.of("25.4", Unit.INCH)),
              Map.entry("ft", UnitWords.Word.with("304.8", "in", Unit.INCH)),
              Map.entry("foot", UnitWords.Word.with("304.8", "in", Unit.INCH)),
              Map.entry("feet", UnitWords.Word.with("304.8", "in", Unit.INCH)),
              Map.entry("'", UnitWords.Word.with("304.8", "in", Unit.INCH)),
              Map.entry("km", UnitWords.Word.of("1000000", Unit.MM))),
          LengthFormatException::new);

  private LengthText() {}

  /**
   * Reads a length.
   *
   * @param text what was written
   * @param unitOfFile the unit of numbers without one, or null if every length must name its own
   * @return millimetres
   * @throws LengthFormatException if the text is not a length
   */
  public static Parsed parse(String text, Unit unitOfFile) {
    return new AmountParser(text, WORDS, wordOf(unitOfFile)).parse();
  }

  /**
   * Takes a plain number as a length.
   *
   * @throws LengthFormatException if it is NaN or infinite, or if there is no unit for it
   */
  public static Parsed parse(Number number, Unit unitOfFile) {
    return new AmountParser(plain(number), WORDS, wordOf(unitOfFile)).parse();
  }

  private static UnitWords.Word wordOf(Unit unit) {
    return unit == null ? null : WORDS.words().get(unit == Unit.MM ? "mm" : "in");
  }

  private static String plain(Number number) {
    double value = number.doubleValue();
    if (!Double.isFinite(value)) {
      throw new LengthFormatException("`" + number + "` is not a finite number", WORDS.example());
    }
    return BigDecimal.valueOf(value).toPlainString();
  }
}
