package sawstead.layout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.layout.sheet.Fractions.Rise;
import sawstead.layout.sheet.Fractions.Run;

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
}
