package sawstead.measure;

import java.util.Map;

/** Reads an angle: {@code 45}, {@code 45°}, {@code 15 deg}; with a band if there is one. */
public final class AngleText {

  private static final UnitWords.Word DEGREE = UnitWords.Word.of("1", null);

  private static final UnitWords WORDS =
      new UnitWords(
          "an angle",
          "deg or °",
          "for example 45 or 22.5 deg",
          Map.of("deg", DEGREE, "degree", DEGREE, "degrees", DEGREE, "°", DEGREE),
          AmountFormatException::new);

  private AngleText() {}

  /**
   * Reads an angle; a plain number is degrees.
   *
   * @return degrees
   * @throws AmountFormatException if the text is not an angle
   */
  public static Parsed parse(String text) {
    return new AmountParser(text, WORDS, DEGREE).parse();
  }
}
