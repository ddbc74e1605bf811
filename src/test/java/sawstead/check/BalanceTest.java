package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.solid.Vec;
import sawstead.station.Support;

class BalanceTest {
  @Test
  void tippingForce_of60KilogramsAt350_isThatOfStatics() {
    // REF-STB-01: 60 kg, d 350, push at h 900 mm -> 228.8 N.
    Balance balance = new Balance(60, new Vec(350, 400, 450), rectangle(1000, 800, 0));
    assertEquals(228.8, balance.tippingForce(900), 0.05);
  }

  @Test
  void margin_inARectangle_isTheLeastDistanceToItsSides() {
    // REF-STB-02: rectangle 600 x 500, centre of mass (320, 240) -> margin 240.
    Balance balance = new Balance(1, new Vec(320, 240, 300), rectangle(600, 500, 0));
    assertEquals(240, balance.margin(), 1e-12);
  }

  @Test
  void margin_withSwivellingCasters_isLessByTheirTrail() {
    Balance balance = new Balance(1, new Vec(320, 240, 300), rectangle(600, 500, 35));
    assertEquals(205, balance.margin(), 1e-12);
  }

  @Test
  void margin_outside_isNegative() {
    Balance balance = new Balance(1, new Vec(-20, 240, 300), rectangle(600, 500, 0));
    assertEquals(-20, balance.margin(), 1e-12);
  }

  @Test
  void loads_ofThreeSupports_areThoseOfStatics() {
    // REF-STB-04: W 1, contacts (0,0), (600,0), (600,500), cm (320,240) -> 0.46667, 0.05333, 0.48.
    Balance balance = new Balance(1, new Vec(320, 240, 300), rectangle(600, 500, 0));
    double[] loads = balance.loads(support(0, 0, 0), support(600, 0, 0), support(600, 500, 0));
    assertArrayEquals(new double[] {0.46667, 0.05333, 0.48}, loads, 5e-6);
  }

  @Test
  void greatestLoad_withTheMassInTheMiddle_isHalfOfIt() {
    // REF-STB-04: the two diagonal casters carry W/2 each, not the dealers' third of REF-STB-03.
    Balance balance = new Balance(120, new Vec(300, 250, 300), rectangle(600, 500, 0));
    assertEquals(60, balance.greatestLoad(), 1e-9);
  }

  @Test
  void margin_ofRandomSupports_isPositiveExactlyInsideTheirTriangles() {
    // A slow rival: a point is in the hull exactly when it is in some triangle of the supports.
    long seed = 20260105L;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      List<Support> supports =
          random
              .ints(4 + random.nextInt(4), 0, 1000)
              .mapToObj(x -> support(x, random.nextInt(1000), 0))
              .toList();
      Vec centre = new Vec(random.nextInt(1000) + 0.5, random.nextInt(1000) + 0.25, 0);
      Balance balance = new Balance(1, centre, supports);
      assertEquals(
          balance.greatestLoad() > 0, balance.margin() > 0, "seed " + seed + ", case " + i);
    }
  }

  @Test
  void loads_ofRandomTriangles_balanceForceAndMoments() {
    long seed = 7L;
    Random random = new Random(seed);
    int carried = 0;
    for (int i = 0; i < 500; i++) {
      Support[] s = new Support[3];
      for (int k = 0; k < 3; k++) {
        s[k] = support(random.nextDouble() * 1000, random.nextDouble() * 1000, 0);
      }
      Vec centre = new Vec(random.nextDouble() * 1000, random.nextDouble() * 1000, 0);
      double[] loads = new Balance(80, centre, List.of(s)).loads(s[0], s[1], s[2]);
      if (loads.length == 3) {
        carried++;
        double sum = loads[0] + loads[1] + loads[2];
        double x = (loads[0] * s[0].at().x() + loads[1] * s[1].at().x() + loads[2] * s[2].at().x());
        assertEquals(80, sum, 1e-9, "seed " + seed + ", case " + i);
        assertEquals(80 * centre.x(), x, 1e-6, "seed " + seed + ", case " + i);
      }
    }
    assertTrue(carried > 20, "seed " + seed + " gave only " + carried + " cases");
  }

  private static List<Support> rectangle(double width, double depth, double wander) {
    return List.of(
        support(0, 0, wander),
        support(width, 0, wander),
        support(width, depth, wander),
        support(0, depth, wander));
  }

  private static Support support(double x, double y, double wander) {
    return new Support(new Vec(x, y, 0), wander, 50);
  }
}
