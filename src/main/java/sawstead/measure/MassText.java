package sawstead.measure;

import java.util.Map;

/**
 * Reads a mass: {@code 22 kg}, {@code 52 lb}, {@code 12 lb 4 oz}, {@code 850 g}; with a band if
 * there is one. A plain number is kilograms in a file of millimetres. In a file of inches it could
 * be either, so it is refused.
 */
public final class MassText {

  private static final UnitWords WORDS =
      new UnitWords(
          "a mass",
          "kg, g, lb or oz",
          "for example 22 kg or 52 lb",
          Map.of(
              "kg", UnitWords.Word.of("1", null),
              "g", UnitWords.Word.of("0.001", null),
              "lb", UnitWords.Word.with("0.45359237", "oz", null),
              "lbs", UnitWords.Word.with("0.45359237", "oz", null),
              "oz", UnitWords.Word.of("0.028349523125", null)),
          AmountFormatException::new);

  private MassText() {}

  /**
   * Reads a mass.
   *
   * @param text what was written
   * @param unitOfFile the unit of lengths of the file, or null if there is none
   * @return kilograms
   * @throws AmountFormatException if the text is not a mass
   */
  public static Parsed parse(String text, Unit unitOfFile) {
    UnitWords.Word plain = unitOfFile == Unit.MM ? WORDS.words().get("kg") : null;
    return new AmountParser(text, WORDS, plain).parse();
  }
}
