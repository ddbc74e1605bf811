package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths against the exact inch (REF-NUM-01: 1 in = 25.4 mm, 1 ft = 304.8 mm). */
class LengthTextTest {

  private static final double EXACT = 0;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "1/32|0.79375",
        "1/64|0.396875",
        "23/32|18.25625",
        "47/64|18.653125",
        "26-1/2|673.1",
        "48|1219.2",
        "96|2438.4"
      })
  void parse_ofInches_isExactDecimal(String text, double millimetres) {
    // REF-NUM-01, every row
    assertEquals(millimetres, LengthText.parse(text, Unit.INCH).nominal(), EXACT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "34-3/4|882.65",
        "34 3/4 in|882.65",
        "34¾|882.65",
        "34 ¾ in|882.65",
        "34-¾\"|882.65",
        "34 3⁄4″|882.65",
        "3/4\"|19.05",
        "¾ in.|19.05",
        "19.05 mm|19.05",
        "19.05MM|19.05",
        "1' 6\"|457.2",
        "1'-6\"|457.2",
        "1′ 6″|457.2",
        "1’6”|457.2",
        "1' 6|457.2",
        "1 ft 6 in|457.2",
        "1' 6-1/2\"|469.9",
        "1' 6 1/2\"|469.9",
        "2 ft|609.6",
        "36 feet|10972.8",
        "2.5 cm|25",
        "1.2 m|1200",
        "3 km|3000000",
        "34.5|876.3",
        ".5|12.7",
        "-5-1/2|-139.7",
        "−5-1/2|-139.7",
        "- 5 1/2|-139.7",
        "+5|127",
        "0|0",
        "-0|0",
        "3/2|38.1"
      })
  void parse_ofWorkshopSpellings_inAFileOfInches(String text, double millimetres) {
    Parsed parsed = LengthText.parse(text, Unit.INCH);
    assertEquals(millimetres, parsed.nominal(), EXACT, text);
    assertFalse(parsed.hasBand());
  }

  @Test
  void parse_ofFeet_agreesWithPublishedConversion() {
    // REF-NUM-05: 36 ft = 10.9728 m (NIST SP 811)
    assertEquals(10.9728, LengthText.parse("36 ft", Unit.MM).nominal() / 1000, 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "34-3/4 ± 1/32|882.65|0.79375|0.79375",
        "34-3/4 ± 1/32 in|882.65|0.79375|0.79375",
        "34-3/4 in ± 1/32|882.65|0.79375|0.79375",
        "34-3/4 in ± 0.5 mm|882.65|0.5|0.5",
        "18.2 mm +- 0.5|18.2|0.5|0.5",
        "18.2 mm +/- 1/32 in|18.2|0.79375|0.79375",
        "19 mm +0.5/-0.2|19|0.2|0.5",
        "19 mm +0.5/-0.2 mm|19|0.2|0.5",
        "19 mm +0.5 -0.2|19|0.2|0.5",
        "19 mm -0.2/+0.5|19|0.2|0.5",
        "19 mm −0.2 +0.5|19|0.2|0.5",
        "3/4 +1/32 -0|19.05|0|0.79375",
        "3/4 +1/32/-1/64|19.05|0.396875|0.79375",
        "3/4±0|19.05|0|0",
        "-5-1/2 ± 1/32|-139.7|0.79375|0.79375"
      })
  void parse_ofBands_inAFileOfInches(String text, double nominal, double minus, double plus) {
    Parsed parsed = LengthText.parse(text, Unit.INCH);
    assertEquals(nominal, parsed.nominal(), EXACT);
    assertEquals(minus, parsed.minus(), EXACT);
    assertEquals(plus, parsed.plus(), EXACT);
    assertTrue(parsed.hasBand());
  }

  @Test
  void parse_ofPlainText_takesTheUnitOfTheFile() {
    assertEquals(34, LengthText.parse("34", Unit.MM).nominal());
    assertEquals(863.6, LengthText.parse("34", Unit.INCH).nominal());
    assertEquals(863.6, LengthText.parse(34, Unit.INCH).nominal());
    assertEquals(0.5, LengthText.parse("18 ± 0.5 mm", Unit.MM).plus());
  }

  @Test
  void parse_tellsWhichSystemWasWritten() {
    assertEquals(null, LengthText.parse("34", Unit.MM).written());
    assertEquals(Unit.MM, LengthText.parse("3 cm", Unit.INCH).written());
    assertEquals(Unit.INCH, LengthText.parse("1' 6\"", Unit.MM).written());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "12,5|`12,5` has a comma, which some read as a decimal mark and some do not|12.5",
        "2,440 mm|`2,440 mm` has a comma, which some read as a decimal mark and some do not|2.440 mm",
        "3/0|`3/0` divides by zero|34-3/4",
        "34-3/0|`34-3/0` divides by zero|34-3/4",
        "34 35|`34 35` has two numbers that make no fraction|34-3/4",
        "34-35|`34-35` has two numbers that make no fraction|34-3/4",
        "34-5/4|`34-5/4` has a fraction of one or more after a whole number|35-1/4",
        "34.5 1/2|`1/2` of `34.5 1/2` cannot be read|34-3/4",
        "34 - 3/4|the band of `34 - 3/4` has one side only|34-3/4",
        "34 in wide|`wide` of `34 in wide` cannot be read|34-3/4",
        "34 furlongs|`furlongs` of `34 furlongs` is no unit of a length|mm, cm, m, in or ft",
        "1' 6 mm|`1' 6 mm` has two parts in units that do not go together|34-3/4",
        "18 ± 0.5 mm|the band of `18 ± 0.5 mm` has a unit, but the value itself has none|18 mm",
        "18 ±|`18 ±` cannot be read as a length|34-3/4",
        "18 ± -1|`18 ± -1` cannot be read as a length|34-3/4",
        "18 ± 1 2|`18 ± 1 2` has two numbers that make no fraction|34-3/4",
        "18 +0.5|the band of `18 +0.5` has one side only|+0.5/-0.2",
        "nan|`nan` is not a finite number|34-3/4",
        ".inf|`.inf` is not a finite number|34-3/4",
        "-Infinity|`-Infinity` is not a finite number|34-3/4",
        "999999999999|`999999999999` is far beyond anything in a workshop|34-3/4",
        "1e3|`1e3` is written with an exponent|in full",
        "wide|`wide` cannot be read as a length|34-3/4",
        "3/4/5|`/5` of `3/4/5` cannot be read|34-3/4",
        "٣ mm|`٣ mm` cannot be read as a length|34-3/4"
      })
  void parse_ofWhatIsNoLength_saysWhatAndWhatToWrite(String text, String what, String remedy) {
    LengthFormatException refusal =
        assertThrows(LengthFormatException.class, () -> LengthText.parse(text, Unit.INCH));
    assertEquals(what, refusal.what());
    assertTrue(refusal.remedy().contains(remedy), refusal.remedy());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "\u00a0"})
  void parse_ofNothing_isRefused(String text) {
    assertThrows(LengthFormatException.class, () -> LengthText.parse(text, Unit.INCH));
  }

  @Test
  void parse_ofNaNAndInfiniteNumbers_isRefused() {
    for (double number : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1 / 0.0, 1e300}) {
      assertThrows(LengthFormatException.class, () -> LengthText.parse(number, Unit.MM));
    }
  }

  @Test
  void parse_withoutAUnitAnywhere_isRefused() {
    LengthFormatException refusal =
        assertThrows(LengthFormatException.class, () -> LengthText.parse("34-3/4", null));
    assertEquals("`34-3/4` has no unit, and a plain number could be any", refusal.what());
    assertEquals(882.65, LengthText.parse("34-3/4 in", null).nominal());
  }

  @Test
  void parse_ofJunk_neverThrowsAnythingElse() {
    long seed = 20260101L;
    Random random = new Random(seed);
    String alphabet = "0123456789/-+.,± '\"inmcft¾⁄′″”eE\u00a0µ٣{}[]\n\0naNf∞";
    for (int round = 0; round < 200_000; round++) {
      StringBuilder junk = new StringBuilder();
      for (int length = random.nextInt(14); length > 0; length--) {
        junk.append(
            random.nextInt(40) == 0
                ? (char) random.nextInt(0x10000)
                : alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        Parsed parsed = LengthText.parse(junk.toString(), random.nextBoolean() ? Unit.MM : null);
        assertTrue(Double.isFinite(parsed.nominal()) && parsed.minus() >= 0 && parsed.plus() >= 0);
      } catch (LengthFormatException refusal) {
        assertFalse(refusal.remedy().isBlank());
      } catch (RuntimeException other) {
        throw new AssertionError("seed " + seed + ", text `" + junk + "`", other);
      }
    }
  }

  @Test
  void parse_ofTheSameFractionInManySpellings_isTheSameNumber() {
    long seed = 20260102L;
    Random random = new Random(seed);
    for (int round = 0; round < 5_000; round++) {
      int whole = 1 + random.nextInt(120);
      int denominator = 1 << (1 + random.nextInt(6));
      int numerator = 1 + random.nextInt(denominator - 1);
      // The slow rival: one multiplication in doubles, exact to an ulp or two.
      double expected = (whole + (double) numerator / denominator) * 25.4;
      String fraction = numerator + "/" + denominator;
      String decimal = String.format(Locale.ROOT, "%.6f", whole + (double) numerator / denominator);
      for (String text :
          new String[] {
            whole + "-" + fraction, whole + " " + fraction + " in", decimal + "\"",
          }) {
        double read = LengthText.parse(text, Unit.INCH).nominal();
        assertEquals(expected, read, 1e-11, () -> "seed " + seed + ", text " + text);
      }
      String feet = whole / 12 + "' " + whole % 12 + "-" + fraction + "\"";
      if (whole % 12 > 0) {
        assertEquals(
            LengthText.parse(whole + "-" + fraction, Unit.INCH).nominal(),
            LengthText.parse(feet, Unit.MM).nominal(),
            EXACT,
            () -> "seed " + seed + ", text " + feet);
      }
    }
  }
}
