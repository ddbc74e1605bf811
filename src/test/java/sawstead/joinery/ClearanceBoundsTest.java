package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/** What is ruled out by boxes and balls is ruled out by the exact distances as well. */
class ClearanceBoundsTest {
  private static Vec point(Random random) {
    return new Vec(random.nextInt(200) - 100, random.nextInt(200) - 100, random.nextInt(200) - 100);
  }

  @Test
  void isBeyond_isNeverSaidOfWhatIsNear() {
    int beyond = 0;
    for (int seed = 0; seed < 4000; seed++) {
      Random random = new Random(seed);
      Vec low = point(random);
      Vec size = new Vec(1 + random.nextInt(80), 1 + random.nextInt(80), 1 + random.nextInt(80));
      PrismAir box = PrismAir.of(new Box(low, low.plus(size)));
      Rod rod = new Rod(point(random), point(random), 1 + random.nextInt(20));
      Rod other = new Rod(point(random), point(random), 1 + random.nextInt(20));
      if (box.isBeyond(rod.from(), rod.to(), rod.radius())) {
        beyond++;
        assertTrue(
            box.distance(rod.from(), rod.to()) > rod.radius(), "box and rod of seed " + seed);
      }
      if (rod.isBeyond(other)) {
        beyond++;
        assertTrue(rod.gap(other) > 0, "rods of seed " + seed);
      }
      if (new RodAir(other).isBeyond(rod.from(), rod.to(), rod.radius())) {
        assertTrue(
            new RodAir(other).distance(rod.from(), rod.to()) > rod.radius(), "air, seed " + seed);
      }
    }
    assertTrue(beyond > 1000, "only " + beyond + " of 8000 pairs were ruled out");
  }
}
