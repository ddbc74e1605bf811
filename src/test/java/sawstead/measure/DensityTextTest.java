package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** 1 lb/ft3 = 16.01846337 kg/m3 (values.md, exact constants). */
class DensityTextTest {

  @Test
  void parse_isKilogramsPerCubicMetre() {
    assertEquals(600, DensityText.parse("600").nominal());
    assertEquals(685, DensityText.parse("685 kg/m3").nominal());
    assertEquals(685, DensityText.parse("685kg/m³").nominal());
    // REF-PLY-21: 36 lb/ft3 = 576.7 kg/m3
    assertEquals(576.7, DensityText.parse("36 lb/ft3").nominal(), 0.05);
    assertEquals(16.01846337, DensityText.parse("1 lb/ft3").nominal(), 1e-8);
    assertEquals(60, DensityText.parse("600 ± 60").plus());
  }

  @Test
  void parse_ofALength_isRefused() {
    AmountFormatException refusal =
        assertThrows(AmountFormatException.class, () -> DensityText.parse("600 mm"));
    assertEquals("`mm` of `600 mm` is no unit of a density", refusal.what());
  }
}
