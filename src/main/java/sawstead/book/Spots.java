package sawstead.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * Points of a panel as one marks them with a gauge: those at one distance from an edge together.
 *
 * @param uv from the corner that is measured from, along and across the grain in turn, mm
 */
record Spots(List<double[]> uv) {
  /** Points whose distances differ by less are on one line, mm. */
  private static final double ALIKE = 0.05;

  /** The fewest lines that name them all. */
  List<String> lines(DoubleFunction<String> amount) {
    List<String> along = lines(1, 0, " up: ", " along", amount);
    List<String> up = lines(0, 1, " along: ", " up", amount);
    return along.size() <= up.size() ? along : up;
  }

  private List<String> lines(
      int shared, int other, String mid, String end, DoubleFunction<String> amount) {
    Map<Long, List<double[]>> rows = new TreeMap<>();
    for (double[] point : uv) {
      rows.computeIfAbsent(Math.round(point[shared] / ALIKE), any -> new ArrayList<>()).add(point);
    }
    List<String> lines = new ArrayList<>();
    for (List<double[]> row : rows.values()) {
      lines.add(
          "at "
              + amount.apply(row.get(0)[shared])
              + mid
              + row.stream()
                  .map(p -> p[other])
                  .sorted()
                  .map(amount::apply)
                  .collect(Collectors.joining(", "))
              + end);
    }
    return lines;
  }
}
