package sawstead.squaring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThreeFourFiveTest {

  private static ThreeFourFive triangle(Hand side, double p, double q, double d, double band) {
    return new ThreeFourFive(side, Reading.of(p, band), Reading.of(q, band), Reading.of(d, band));
  }

  @Test
  void squareness_of345_isNone() {
    assertEquals(0, triangle(Hand.LEFT, 300, 400, 500, 0).squareness().error(), 1e-12);
  }

  /** From points: the fence turned by an angle, the kerf straight up. */
  @ParameterizedTest
  @EnumSource(Hand.class)
  void squareness_fromPoints_isTheAngleOfTheFence(Hand side) {
    for (double angle : new double[] {-0.01, -1e-4, 2e-3}) {
      double x = (side == Hand.LEFT ? -300 : 300) * Math.cos(angle);
      double y = (side == Hand.LEFT ? -300 : 300) * Math.sin(angle);
      double d = Math.hypot(x, 400 - y);
      assertEquals(angle, triangle(side, 300, 400, d, 0).squareness().error(), 1e-12);
    }
  }

  /** The derivatives, by differences. */
  @Test
  void uncertainty_addsTheThreeSidesAsSquares() {
    double base = triangle(Hand.LEFT, 300, 400, 501, 0).squareness().error();
    double h = 1e-4;
    double dp = (triangle(Hand.LEFT, 300 + h, 400, 501, 0).squareness().error() - base) / h;
    double dq = (triangle(Hand.LEFT, 300, 400 + h, 501, 0).squareness().error() - base) / h;
    double dd = (triangle(Hand.LEFT, 300, 400, 501 + h, 0).squareness().error() - base) / h;
    double u = 0.5 / Math.sqrt(3);
    assertEquals(
        u * Math.sqrt(dp * dp + dq * dq + dd * dd),
        triangle(Hand.LEFT, 300, 400, 501, 0.5).squareness().uncertainty(),
        1e-8);
  }

  @Test
  void triangle_thatDoesNotClose_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> triangle(Hand.LEFT, 300, 400, 700, 0));
    assertThrows(IllegalArgumentException.class, () -> triangle(Hand.LEFT, 300, 400, 100, 0));
  }
}
