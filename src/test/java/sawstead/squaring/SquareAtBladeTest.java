package sawstead.squaring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SquareAtBladeTest {

  /** The arm stands square on a turned fence; it is pushed against the plate from either side. */
  @ParameterizedTest
  @ValueSource(doubles = {-0.004, -1e-5, 3e-4, 0.01})
  void squareness_fromTheArm_isTheAngleOfTheFence(double angle) {
    double length = 180;
    for (Hand side : Hand.values()) {
      double farX = -length * Math.sin(angle);
      double touch = side == Hand.LEFT ? Math.max(0, farX) : Math.min(0, farX);
      double nearGap = Math.abs(touch);
      double farGap = Math.abs(touch - farX);
      StripEnd end = nearGap > farGap ? StripEnd.NEAR : StripEnd.FAR;
      SquareAtBlade square =
          new SquareAtBlade(side, end, Math.max(nearGap, farGap), 0, length * Math.cos(angle), 0);
      assertEquals(angle, square.squareness().error(), 1e-12, side + " " + end);
    }
  }

  @Test
  void uncertainty_isGapAndSquareTogether() {
    SquareAtBlade square = new SquareAtBlade(Hand.LEFT, StripEnd.FAR, 0.1, 0.03, 100, 0.04);
    assertEquals(0.05 / Math.sqrt(3) / 100, square.squareness().uncertainty(), 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () -> new SquareAtBlade(Hand.LEFT, StripEnd.FAR, -1, 0, 100, 0));
  }
}
