package sawstead.drawing.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.drawing.page.Fractions.Rise;
import sawstead.drawing.page.Fractions.Run;

class FractionsTest {

  @Test
  void runs_ofALengthInInches_setTheFractionSmall() {
    assertEquals(
        List.of(
            new Run("stop at 18\u2009", Rise.PLAIN),
            new Run("1", Rise.ABOVE),
            new Run(Fractions.SLASH, Rise.PLAIN),
            new Run("2", Rise.BELOW),
            new Run(" in (469.9 mm)", Rise.PLAIN)),
        Fractions.runs("stop at 18-1/2 in (469.9 mm)"));
  }

  @Test
  void runs_ofNames_areLeftAlone() {
    assertEquals(
        List.of(new Run("rack-1/2, stand/leg-3-face", Rise.PLAIN)),
        Fractions.runs("rack-1/2, stand/leg-3-face"));
  }

  @Test
  void runs_withAFractionSlash_areFractionsWithoutAUnit() {
    assertEquals(
        List.of(
            new Run("2\u2009", Rise.PLAIN),
            new Run("23", Rise.ABOVE),
            new Run(Fractions.SLASH, Rise.PLAIN),
            new Run("32", Rise.BELOW),
            new Run(", 4", Rise.PLAIN)),
        Fractions.runs("2-23" + Fractions.SLASH + "32, 4"));
  }
}
