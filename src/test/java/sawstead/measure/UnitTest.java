package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class UnitTest {

  @Test
  void of_findsTheWordOfABrief() {
    assertEquals(Optional.of(Unit.INCH), Unit.of("inch"));
    assertEquals(Optional.of(Unit.MM), Unit.of("mm"));
    assertEquals(Optional.empty(), Unit.of("INCH"));
  }

  @Test
  void millimetres_ofAnInch_areExact() {
    // 1 in = 25.4 mm exactly (values.md, exact constants)
    assertEquals(25.4, Unit.INCH.millimetres());
  }
}
