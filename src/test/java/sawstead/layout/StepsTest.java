package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class StepsTest {
  @Test
  void decimalFractions_areNotRoundedAwayByTheirBinaryNoise() {
    // 0.1 + 0.2 is not 0.3 in binary, but it is 300 micrometres.
    assertEquals(300, Steps.up(0.1 + 0.2));
    assertEquals(300, Steps.down(0.3));
    assertEquals(3200, Steps.up(3.2));
    assertEquals(2_440_000, Steps.down(2440));
  }

  @Test
  void partsAreRoundedUpAndSheetsDown() {
    // 19/64 in is 7.540625 mm.
    assertEquals(7541, Steps.up(7.540625));
    assertEquals(7540, Steps.down(7.540625));
  }

  @Test
  void aLengthThatNoSheetHas_isRefused() {
    assertThrows(ArithmeticException.class, () -> Steps.up(1e9));
  }

  @Test
  void lengths_areWrittenTheSameInEveryCountry() {
    assertEquals("2440", Lengths.text(2440));
    assertEquals("3.2", Lengths.text(3.2));
    assertEquals("396.875", Lengths.text(396.875));
    assertEquals("0", Lengths.text(0));
    assertEquals("100", Lengths.text(100));
  }
}
