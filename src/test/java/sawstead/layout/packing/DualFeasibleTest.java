package sawstead.layout.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DualFeasibleTest {
  /** The defining property: what fits side by side has values that sum to at most 1. */
  @Test
  void values_ofExtentsThatFit_sumToAtMostOne() {
    for (long seed = 1; seed <= 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int capacity = 5 + random.nextInt(40);
      int[] extents = random.ints(6, 1, capacity + 1).toArray();
      List<DualFeasible> family = DualFeasible.family(capacity, extents);
      for (int run = 0; run < 50; run++) {
        int[] some = fitting(random, capacity);
        for (int f = 0; f < family.size(); f++) {
          double sum = 0;
          for (int extent : some) {
            sum += family.get(f).value(extent);
          }
          assertTrue(sum <= 1 + 1e-12, "seed " + seed + ", function " + f + ": " + sum);
        }
      }
    }
  }

  private static int[] fitting(SplittableRandom random, int capacity) {
    int[] some = new int[1 + random.nextInt(8)];
    int left = capacity;
    for (int i = 0; i < some.length && left > 0; i++) {
      some[i] = 1 + random.nextInt(random.nextBoolean() ? left : Math.max(1, left / 3));
      left -= some[i];
    }
    return some;
  }

  @Test
  void family_ofManyExtents_staysSmall() {
    int[] extents = new SplittableRandom(1).ints(500, 1, 100_000).toArray();
    assertTrue(DualFeasible.family(100_000, extents).size() <= 1 + 12 + 3 * 40);
  }

  @Test
  void wholeCapacity_hasValueOne() {
    for (DualFeasible function : DualFeasible.family(10, new int[] {3, 4, 5})) {
      assertEquals(1, function.value(10), 1e-12);
    }
  }
}
