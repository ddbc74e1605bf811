package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class AngleTest {

  @Test
  void radians_ofHalfATurn_isPi() {
    assertEquals(Math.PI, Angle.ofDegrees(180).radians(), 1e-15);
    assertEquals(45, Angle.ofDegrees(45).degrees());
  }

  @Test
  void constructor_refusesNaN() {
    assertThrows(IllegalArgumentException.class, () -> Angle.ofDegrees(Double.NaN));
  }
}
