package sawstead.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.drawing.dxf.DxfUnit;
import sawstead.drawing.dxf.DxfVersion;
import sawstead.solid.Face;

class LayerNamesTest {
  @ParameterizedTest
  @CsvSource({
    "groove, 9.5, FRONT, MM, groove-9mm5-front",
    "dado, 6, BACK, MM, dado-6mm-back",
    "recess, 10, FRONT, MM, recess-10mm-front",
    "relief, 9.525, FRONT, INCH, relief-0in375-front",
    "rabbet, 25.4, BACK, INCH, rabbet-1in-back",
    "bore, 0.0001, FRONT, MM, bore-0mm-front",
  })
  void of_aDepth_writesTheUnitAsThePoint(
      String operation, double depth, Face face, DxfUnit unit, String name) {
    assertEquals(name, new LayerNames(DxfVersion.R2000, unit).of(operation, depth, face).name());
  }

  /** R12 takes at most 31 of A-Z, 0-9, $, - and _ (from memory; what 1009 writers keep to). */
  @Test
  void of_theLongestName_fitsTheOldestVersion() {
    String name =
        new LayerNames(DxfVersion.R12, DxfUnit.MM).of("groove", 12345.678, Face.FRONT).name();
    assertEquals("GROOVE-12345MM678-FRONT", name);
    assertTrue(name.matches("[A-Z0-9$_-]{1,31}"));
  }
}
