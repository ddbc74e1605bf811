package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** 1 lb = 0.45359237 kg exactly (values.md, exact constants); 16 oz to the pound. */
class MassTextTest {

  @Test
  void parse_ofUnits_isKilograms() {
    assertEquals(22, MassText.parse("22 kg", Unit.INCH).nominal());
    assertEquals(0.85, MassText.parse("850 g", null).nominal());
    assertEquals(52 * 0.45359237, MassText.parse("52 lb", Unit.MM).nominal(), 1e-12);
    assertEquals(12.25 * 0.45359237, MassText.parse("12 lb 4 oz", null).nominal(), 1e-12);
    assertEquals(0.45359237, MassText.parse("16 oz", null).nominal(), 1e-15);
  }

  @Test
  void parse_ofPlainNumbers_isKilogramsInMetricFilesOnly() {
    assertEquals(22, MassText.parse("22", Unit.MM).nominal());
    AmountFormatException refusal =
        assertThrows(AmountFormatException.class, () -> MassText.parse("22", Unit.INCH));
    assertEquals("`22` has no unit, and a plain number could be any", refusal.what());
    assertEquals("write for example 22 kg or 52 lb", refusal.remedy());
  }

  @Test
  void parse_ofBand_isKilograms() {
    Parsed parsed = MassText.parse("50 lb ± 5", Unit.MM);
    assertEquals(5 * 0.45359237, parsed.plus(), 1e-12);
    assertEquals(null, parsed.written());
  }

  @Test
  void parse_ofALength_isRefused() {
    AmountFormatException refusal =
        assertThrows(AmountFormatException.class, () -> MassText.parse("22 mm", Unit.MM));
    assertEquals("`mm` of `22 mm` is no unit of a mass", refusal.what());
    assertTrue(refusal.remedy().startsWith("use kg, g, lb or oz"));
  }
}
