package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthFormatTest {

  @ParameterizedTest
  @CsvSource({
    "470,470",
    "470.5,470.5",
    "470.123,470.12",
    "2440,2440",
    "0.004,0",
    "-0.004,0",
    "-12.5,-12.5",
    // REF-NUM-04: half to even
    "3.965,3.96",
    "3.955,3.96",
    "470.125,470.12",
    "470.135,470.14"
  })
  void text_inMillimetres_hasAtMostTwoDecimals(double length, String text) {
    assertEquals(text, LengthFormat.millimetres().text(length));
  }

  @Test
  void withUnit_namesTheUnit() {
    assertEquals("470.5 mm", LengthFormat.of(Unit.MM).withUnit(470.5));
    assertEquals("18-1/2 in", LengthFormat.of(Unit.INCH).withUnit(469.9));
    assertEquals("47/64 in", LengthFormat.inches(64).withUnit(18.653125));
  }

  @Test
  void inWords_setsOffThousands() {
    assertEquals("3,000,000 mm", LengthFormat.millimetres().inWords(3e6));
    assertEquals("-0.5 mm", LengthFormat.millimetres().inWords(-0.5));
    assertEquals("2,440.25 mm", LengthFormat.millimetres().inWords(2440.25));
    assertEquals("96 in", LengthFormat.of(Unit.INCH).inWords(2438.4));
  }

  @Test
  void residual_isWhatTheTextLeavesOut() {
    // REF-NUM-02: 18 mm is 0.25625 mm short of 23/32 in
    assertEquals(-0.25625, LengthFormat.inches(32).residual(18), 1e-12);
    assertEquals(0.003, LengthFormat.millimetres().residual(470.123), 1e-12);
  }

  @Test
  void text_readBack_isTheLengthLessItsResidual() {
    long seed = 20260104L;
    Random random = new Random(seed);
    for (int round = 0; round < 20_000; round++) {
      double length = (random.nextDouble() - 0.3) * 5000;
      LengthFormat format =
          random.nextBoolean()
              ? LengthFormat.millimetres()
              : LengthFormat.inches(1 << random.nextInt(7));
      String text = random.nextBoolean() ? format.text(length) : format.withUnit(length);
      double read = LengthText.parse(text, format.unit()).nominal();
      assertEquals(
          length, read + format.residual(length), 1e-9, () -> "seed " + seed + ", " + text);
    }
  }

  @Test
  void inches_ofNoDivisions_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> LengthFormat.inches(0));
  }
}
