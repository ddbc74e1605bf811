package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class AngleTextTest {

  @Test
  void parse_isDegrees() {
    assertEquals(45, AngleText.parse("45").nominal());
    assertEquals(22.5, AngleText.parse("22-1/2°").nominal());
    assertEquals(-2, AngleText.parse("-2 deg").nominal());
    assertEquals(0.5, AngleText.parse("45 ± 0.5°").minus());
  }

  @Test
  void parse_ofALength_isRefused() {
    AmountFormatException refusal =
        assertThrows(AmountFormatException.class, () -> AngleText.parse("45 mm"));
    assertEquals("`mm` of `45 mm` is no unit of an angle", refusal.what());
  }
}
