package sawstead.joinery;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How far apart fasteners sit along a joint, and how far from its ends.
 *
 * @param ends distances from the ends, mm, the best first; the first that leaves room is taken
 * @param greatest distance between two, mm
 * @param least distance between two, mm
 */
record Spacing(List<Double> ends, double greatest, double least) {
  /** Screws through a face into a face: 38 mm, narrow strips 20 (common practice, no source). */
  static final Spacing SCREWS = new Spacing(List.of(38.0, 20.0), 200, 21);

  /** Screws into an edge: 50 mm from an end where there is room (common practice, no source). */
  static final Spacing EDGE_SCREWS = new Spacing(List.of(50.0, 38.0, 20.0), 200, 21);

  /** Brads: every 100 to 120 mm, 20 mm from ends (common practice, no source). */
  static final Spacing BRADS = new Spacing(List.of(20.0), 120, 20);

  /** From here on two fasteners with the better end distance are not crowded, mm. */
  private static final double ROOMY = 50;

  /** A single fastener in the middle needs this much on either side, mm (REF-FAS-16: 2.5 D, #8). */
  private static final double SINGLE = 10.4;

  Spacing {
    ends = List.copyOf(ends);
  }

  /** Distance of the first and last from the ends of a joint, mm. */
  double end(double length) {
    for (double end : ends) {
      if (length - 2 * end >= (end == least(ends) ? least : ROOMY)) {
        return end;
      }
    }
    return length / 2;
  }

  /** How many a joint of this length wants. */
  int count(double length) {
    double between = length - 2 * end(length);
    if (between > 0) {
      return Math.max(2, (int) Math.ceil(between / greatest - 1e-9) + 1);
    }
    return length >= 2 * SINGLE ? 1 : 0;
  }

  /** Their coordinates from the start of the joint, mm. */
  List<Double> positions(double length) {
    int count = count(length);
    double end = end(length);
    return IntStream.range(0, count)
        .mapToObj(i -> count == 1 ? length / 2 : end + i * (length - 2 * end) / (count - 1))
        .toList();
  }

  private static double least(List<Double> ends) {
    return ends.get(ends.size() - 1);
  }
}
