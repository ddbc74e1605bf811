package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distances along a joint: common practice, no source; the least ones from REF-FAS-16. */
class SpacingTest {
  @ParameterizedTest
  @CsvSource({"90, 20, 2", "72, 20, 2", "126, 38, 2", "276, 38, 2", "277, 38, 3", "700, 38, 5"})
  void screws_byLength(double length, double end, int count) {
    assertEquals(end, Spacing.SCREWS.end(length));
    assertEquals(count, Spacing.SCREWS.count(length));
  }

  @ParameterizedTest
  @CsvSource({"100, 20, 2", "126, 38, 2", "150, 50, 2", "470, 50, 3"})
  void intoAnEdge_byLength(double length, double end, int count) {
    assertEquals(end, Spacing.EDGE_SCREWS.end(length));
    assertEquals(count, Spacing.EDGE_SCREWS.count(length));
  }

  /** One in the middle where two would crowd; none where one is nearer than 2.5 D to an end. */
  @Test
  void positions_ofShortJoints() {
    assertEquals(List.of(20.0), Spacing.SCREWS.positions(40));
    assertEquals(List.of(), Spacing.SCREWS.positions(20));
    assertEquals(List.of(20.0, 41.0), Spacing.SCREWS.positions(61));
  }

  @Test
  void positions_neverCrowdNorStray() {
    for (Spacing spacing : List.of(Spacing.SCREWS, Spacing.EDGE_SCREWS, Spacing.BRADS)) {
      for (double length = 1; length < 3000; length += 7.3) {
        List<Double> at = spacing.positions(length);
        for (int i = 0; i < at.size(); i++) {
          assertTrue(Math.min(at.get(i), length - at.get(i)) >= 10.4, spacing + " " + length);
          if (i > 0) {
            double pitch = at.get(i) - at.get(i - 1);
            assertTrue(
                pitch <= spacing.greatest() + 1e-9 && pitch >= spacing.least() - 1e-9,
                spacing + " " + length + " " + pitch);
          }
        }
      }
    }
  }
}
