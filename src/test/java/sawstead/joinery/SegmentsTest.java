package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.solid.Vec;

class SegmentsTest {
  @Test
  void distance_ofCrossingAndSkewSegments() {
    Vec o = Vec.ZERO;
    assertEquals(
        0, Segments.distance(o, new Vec(2, 0, 0), new Vec(1, -1, 0), new Vec(1, 1, 0)), 1e-15);
    assertEquals(
        3, Segments.distance(o, new Vec(2, 0, 0), new Vec(1, -1, 3), new Vec(1, 1, 3)), 1e-15);
    assertEquals(
        5, Segments.distance(o, new Vec(2, 0, 0), new Vec(5, 4, 0), new Vec(9, 4, 0)), 1e-15);
    assertEquals(
        4, Segments.distance(o, new Vec(9, 0, 0), new Vec(5, 4, 0), new Vec(7, 4, 0)), 1e-15);
    assertEquals(1, Segments.distance(o, o, new Vec(1, 0, 0), new Vec(1, 0, 0)), 1e-15);
  }

  /** Rival: ternary search over one segment of the exact distance of a point to the other. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12})
  void distance_agreesWithASearch(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      Vec[] p = new Vec[4];
      for (int k = 0; k < 4; k++) {
        p[k] = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      }
      double low = 0;
      double high = 1;
      for (int step = 0; step < 200; step++) {
        double one = low + (high - low) / 3;
        double other = high - (high - low) / 3;
        if (at(p, one) < at(p, other)) {
          high = other;
        } else {
          low = one;
        }
      }
      assertEquals(
          at(p, low), Segments.distance(p[0], p[1], p[2], p[3]), 1e-7, "seed " + seed + " " + i);
      assertTrue(Segments.distance(p[0], p[1], p[2], p[3]) <= at(p, low) + 1e-12);
    }
  }

  private static double at(Vec[] p, double t) {
    return Segments.distance(p[0].plus(p[1].minus(p[0]).scale(t)), p[2], p[3]);
  }
}
