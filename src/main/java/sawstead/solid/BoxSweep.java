package sawstead.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Broad phase by sweep and prune: boxes sorted by where they begin along x, each compared with
 * those that have begun and not ended.
 */
final class BoxSweep {
  private BoxSweep() {}

  /**
   * Pairs of boxes that touch, overlap or are nearer than {@code gap} mm in each direction.
   *
   * @return pairs of indices, the lower first, in no particular order
   */
  static List<int[]> pairs(List<Box> boxes, double gap) {
    int[] order =
        IntStream.range(0, boxes.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> boxes.get(i).low().x()))
            .mapToInt(Integer::intValue)
            .toArray();
    List<int[]> pairs = new ArrayList<>();
    List<Integer> begun = new ArrayList<>();
    for (int i : order) {
      Box box = boxes.get(i);
      begun.removeIf(j -> boxes.get(j).high().x() + gap < box.low().x());
      for (int j : begun) {
        if (box.overlaps(boxes.get(j), gap)) {
          pairs.add(new int[] {Math.min(i, j), Math.max(i, j)});
        }
      }
      begun.add(i);
    }
    return pairs;
  }
}
