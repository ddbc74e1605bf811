package sawstead.joinery;

import java.util.Comparator;
import java.util.Map;

/**
 * A wood screw's number and the sizes that go with it, mm.
 *
 * <p>Shank: {@code 0.060 + 0.013 N} inches (REF-FAS-11). Root and head: REF-FAS-12; its table
 * begins at number 6, numbers 4 and 5 follow the line through 6 and 8. Pilot holes: REF-TRD-06,
 * rounded to 64ths of an inch; what that row leaves out is the 64th nearest to 80 % of the root in
 * soft wood, and one or two sizes more in hard wood, inside the band of 70 to 90 % of REF-FAS-02.
 *
 * @param number 4, 5, 6, 7, 8, 9, 10, 12 or 14
 */
public record ScrewGauge(int number) {
  private static final double INCH = 25.4;

  /** Sizes in thousandths of an inch (root, head) and 64ths of an inch (pilots). */
  private record Sizes(int root, int head, int soft, int hard, int edge) {}

  private static final Map<Integer, Sizes> TABLE =
      Map.of(
          4, new Sizes(95, 212, 4, 5, 5),
          5, new Sizes(104, 237, 5, 6, 6),
          6, new Sizes(113, 262, 5, 6, 6),
          7, new Sizes(122, 287, 6, 7, 7),
          8, new Sizes(131, 312, 6, 7, 7),
          9, new Sizes(142, 337, 7, 8, 8),
          10, new Sizes(152, 363, 7, 8, 8),
          12, new Sizes(171, 414, 8, 9, 9),
          14, new Sizes(196, 480, 9, 11, 11));

  /** Refuses a number that is not made. */
  public ScrewGauge {
    if (!TABLE.containsKey(number)) {
      throw new JoineryException(
          "wood screws are numbered 4 to 10, 12 and 14, found number " + number);
    }
  }

  /** The number whose shank is nearest to a diameter, mm. */
  public static ScrewGauge nearest(double diameter) {
    return TABLE.keySet().stream()
        .sorted()
        .map(ScrewGauge::new)
        .min(Comparator.comparingDouble(g -> Math.abs(g.shank() - diameter)))
        .orElseThrow();
  }

  /** Diameter over the shank, which is that over the thread, mm. */
  public double shank() {
    return (0.060 + 0.013 * number) * INCH;
  }

  /** Diameter at the root of the thread, mm. */
  public double root() {
    return sizes().root / 1000.0 * INCH;
  }

  /** Diameter of a countersunk head, mm. */
  public double head() {
    return sizes().head / 1000.0 * INCH;
  }

  /** Diameter of the washer head of a pocket screw, mm: 2.1 shanks (common practice, no source). */
  public double washerHead() {
    return 2.1 * shank();
  }

  /** Diameter of the pilot hole, mm. */
  public double pilot(Wood wood) {
    int parts =
        switch (wood) {
          case SOFT -> sizes().soft;
          case HARD -> sizes().hard;
          case PLY_EDGE -> sizes().edge;
        };
    return parts / 64.0 * INCH;
  }

  private Sizes sizes() {
    return TABLE.get(number);
  }
}
