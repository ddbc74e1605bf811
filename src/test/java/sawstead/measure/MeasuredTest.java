package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The band [nominal - minus, nominal + plus] is a definition, so nothing outside checks it. */
class MeasuredTest {

  @Test
  void low_andHigh_spanTheBand() {
    Measured value = new Measured("saw.table.width", 640, 0.2, 0.5, Measured.Origin.BANDED);
    assertEquals(639.8, value.low());
    assertEquals(640.5, value.high());
    assertEquals(640.8, value.withNominal(640.3).high(), 1e-12);
  }

  @Test
  void equals_isByValue() {
    assertEquals(Measured.of("a", 3), Measured.plusMinus("a", 3, 0, Measured.Origin.MEASURED));
  }

  @Test
  void constructor_refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> Measured.of("a", Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> Measured.plusMinus("a", 1, -1, Measured.Origin.BANDED));
    assertThrows(NullPointerException.class, () -> Measured.of(null, 1));
  }
}
