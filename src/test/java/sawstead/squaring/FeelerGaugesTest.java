package sawstead.squaring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FeelerGaugesTest {

  @Test
  void stack_ofAnExactLeaf_isThatLeaf() {
    assertEquals(List.of(0.09), FeelerGauges.USUAL.stack(0.09));
    assertEquals(List.of(), FeelerGauges.USUAL.stack(0.01));
  }

  /** Against all subsets of a small set, by bit masks. */
  @Test
  void stack_isTheNearestOfAllSubsets_withTheFewestLeaves() {
    long seed = 5;
    Random random = new Random(seed);
    for (int round = 0; round < 300; round++) {
      List<Double> leaves =
          random.ints(1, 60).distinct().limit(9).mapToObj(i -> i / 100.0).toList();
      double wanted = random.nextDouble() * 1.5;
      double best = Double.POSITIVE_INFINITY;
      int fewest = 0;
      for (int mask = 0; mask < 1 << 9; mask++) {
        if (Integer.bitCount(mask) > FeelerGauges.MOST) {
          continue;
        }
        double sum = 0;
        for (int i = 0; i < 9; i++) {
          sum += (mask >> i & 1) * leaves.get(i);
        }
        double off = Math.abs(sum - wanted);
        if (off < best - 1e-9) {
          best = off;
          fewest = Integer.bitCount(mask);
        } else if (off < best + 1e-9) {
          fewest = Math.min(fewest, Integer.bitCount(mask));
        }
      }
      List<Double> stack = new FeelerGauges(leaves).stack(wanted);
      double sum = stack.stream().mapToDouble(t -> t).sum();
      assertEquals(best, Math.abs(sum - wanted), 1e-8, "seed " + seed + " round " + round);
      assertEquals(fewest, stack.size(), "seed " + seed + " round " + round);
      assertTrue(leaves.containsAll(stack));
    }
  }

  @Test
  void leaves_thatAreNone_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> new FeelerGauges(List.of()));
    assertThrows(IllegalArgumentException.class, () -> new FeelerGauges(List.of(0.0)));
  }
}
