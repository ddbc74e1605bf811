package sawstead.station;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.measure.Measured;

class FiguresTest {

  private record Sum(List<Measured> parts) implements FigureRule {
    @Override
    public String name() {
      return "sum";
    }

    @Override
    public List<Term> terms(Site site, Gauge gauge) {
      return parts.stream().map(p -> new Term(p.path(), gauge.read(p))).toList();
    }
  }

  private record Lowest(List<Measured> parts, Measured less) implements FigureRule {
    @Override
    public String name() {
      return "lowest";
    }

    @Override
    public List<Term> terms(Site site, Gauge gauge) {
      double lowest = parts.stream().mapToDouble(gauge::read).min().orElseThrow();
      return List.of(new Term("lowest", lowest), new Term("less", -gauge.read(less)));
    }
  }

  /**
   * REF-TOL-02: 330 ± 0.5, 600 ± 0.4, 18 ± 0.5, 18 ± 0.5, 70 ± 1.0 add up to 1036 ± 2.9 in the
   * worst case.
   */
  @Test
  void of_heightStack_hasThePublishedWorstCase() {
    Sum stack =
        new Sum(
            List.of(
                banded("a", 330, 0.5),
                banded("b", 600, 0.4),
                banded("c", 18, 0.5),
                banded("d", 18, 0.5),
                banded("e", 70, 1.0)));
    Figure figure = Figures.of(List.of(stack), null).get("sum");
    assertEquals(1036, figure.nominal(), 1e-9);
    assertEquals(1036 - 2.9, figure.low(), 1e-9);
    assertEquals(1036 + 2.9, figure.high(), 1e-9);
    assertEquals("e", figure.rests().get(0));
  }

  /**
   * A rival that tries every corner of the bands: the band of a least value must be exactly its
   * range.
   */
  @Test
  void of_leastOfSeveral_isTheRangeOverAllCorners() {
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      List<Measured> parts = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        parts.add(banded("p" + i, 300 + random.nextDouble(), random.nextDouble()));
      }
      Measured less = banded("less", random.nextDouble(), random.nextDouble() / 2);
      Figure figure = Figures.of(List.of(new Lowest(parts, less)), null).get("lowest");
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int corner = 0; corner < 64; corner++) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 5; i++) {
          least = Math.min(least, end(parts.get(i), (corner >> i & 1) == 1));
        }
        double value = least - end(less, (corner >> 5 & 1) == 1);
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      assertEquals(low, figure.low(), 1e-9, "seed 7, round " + round);
      assertEquals(high, figure.high(), 1e-9, "seed 7, round " + round);
    }
  }

  private static double end(Measured measured, boolean high) {
    return high ? measured.high() : measured.low();
  }

  private static Measured banded(String path, double value, double band) {
    return Measured.plusMinus(path, value, band, Measured.Origin.BANDED);
  }
}
