package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** 1 lb = 0.45359237 kg exactly (values.md, exact constants). */
class MassTest {

  @Test
  void ofPounds_isExact() {
    assertEquals(0.45359237, Mass.ofPounds(1).kilograms());
    assertEquals(52, Mass.ofPounds(52).pounds(), 1e-12);
    assertEquals(22, Mass.ofKilograms(22).kilograms());
  }

  @Test
  void constructor_refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> Mass.ofKilograms(-1));
    assertThrows(IllegalArgumentException.class, () -> Mass.ofKilograms(Double.NaN));
  }
}
