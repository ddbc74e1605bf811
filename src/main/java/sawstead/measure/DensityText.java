package sawstead.measure;

import java.util.Map;

/**
 * Reads a density: {@code 600}, {@code 685 kg/m3}, {@code 36 lb/ft3}; with a band if there is one.
 */
public final class DensityText {

  private static final UnitWords.Word METRIC = UnitWords.Word.of("1", null);

  /** 0.45359237 kg over 0.3048 m cubed (1959 agreement), to 20 digits. */
  private static final UnitWords.Word IMPERIAL = UnitWords.Word.of("16.018463373960139580", null);

  private static final UnitWords WORDS =
      new UnitWords(
          "a density",
          "kg/m3 or lb/ft3",
          "for example 600 or 36 lb/ft3",
          Map.of("kg/m3", METRIC, "kg/m³", METRIC, "lb/ft3", IMPERIAL, "lb/ft³", IMPERIAL),
          AmountFormatException::new);

  private DensityText() {}

  /**
   * Reads a density; a plain number is kg/m3 in every file.
   *
   * @return kg/m3
   * @throws AmountFormatException if the text is not a density
   */
  public static Parsed parse(String text) {
    return new AmountParser(text, WORDS, METRIC).parse();
  }
}
