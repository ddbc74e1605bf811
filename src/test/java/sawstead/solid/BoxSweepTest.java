package sawstead.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BoxSweepTest {
  @Test
  void pairs_agreesWithAskingEveryPair() {
    RandomSolids random = new RandomSolids(220);
    for (int i = 0; i < 100; i++) {
      List<Box> boxes = new ArrayList<>();
      for (int k = 0; k < 60; k++) {
        // Whole numbers, so that many boxes touch.
        Vec low = new Vec(random.below(40), random.below(40), random.below(40));
        boxes.add(
            new Box(low, low.plus(new Vec(random.below(9), random.below(9), random.below(9)))));
      }
      double gap = random.below(3);
      Set<List<Integer>> expected = new HashSet<>();
      for (int a = 0; a < boxes.size(); a++) {
        for (int b = a + 1; b < boxes.size(); b++) {
          if (boxes.get(a).overlaps(boxes.get(b), gap)) {
            expected.add(List.of(a, b));
          }
        }
      }
      List<int[]> found = BoxSweep.pairs(boxes, gap);
      assertEquals(expected.size(), found.size(), "seed 220, case " + i);
      Set<List<Integer>> set = new HashSet<>();
      found.forEach(p -> set.add(List.of(p[0], p[1])));
      assertEquals(expected, set, "seed 220, case " + i);
    }
  }
}
