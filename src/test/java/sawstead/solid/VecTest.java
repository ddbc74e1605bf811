package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VecTest {
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void new_refusesWhatIsNoNumber(double bad) {
    assertThrows(SolidException.class, () -> new Vec(bad, 0, 0));
    assertThrows(SolidException.class, () -> new Vec(0, bad, 0));
    assertThrows(SolidException.class, () -> new Vec(0, 0, bad));
  }

  @Test
  void equals_knowsOneZero() {
    assertEquals(new Vec(0, 0, 0), new Vec(-0.0, -0.0, -0.0));
  }

  @Test
  void cross_isByTheRightHand() {
    assertEquals(Axis.Z.unit(), Axis.X.unit().cross(Axis.Y.unit()));
    assertEquals(Axis.X.unit(), Axis.Y.unit().cross(Axis.Z.unit()));
  }

  @Test
  void length_ofTinyAndHuge() {
    assertEquals(5e-200, new Vec(3e-200, 4e-200, 0).length(), 1e-210);
    assertEquals(5e200, new Vec(3e200, 0, 4e200).length(), 1e190);
    assertEquals(13, new Vec(3, 4, 12).length());
  }

  @Test
  void unit_refusesNoLength() {
    assertThrows(SolidException.class, Vec.ZERO::unit);
  }
}
