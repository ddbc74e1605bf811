package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScrewShelfTest {
  private final ScrewShelf shelf = Bench.shelf();

  /** REF-FAS-13: number 8 needs 6 D = 25.0 mm in the second piece; REF-TRD-07: two thirds of it. */
  @Test
  void choose_throughEighteenIntoAnEdge() {
    Screw screw = shelf.choose(18, 72, true).orElseThrow();
    assertEquals(Bench.screw(8, 50), screw);
    assertTrue(screw.length() - 18 >= 25.0);
  }

  /** A number 10 of the same length would split the plies. Common practice, no source. */
  @Test
  void choose_neverMoreThanNumberEightIntoAnEdge() {
    ScrewShelf thick = ScrewShelf.of(Bench.screw(10, 50));
    assertEquals(Optional.empty(), thick.choose(18, 72, true));
    assertTrue(thick.choose(18, 72, false).isPresent());
  }

  /** REF-TRD-07: the tip stays 3 mm short of the far face. */
  @Test
  void choose_keepsTheTipCovered() {
    assertEquals(Optional.of(Bench.screw(8, 32)), shelf.choose(18, 17, false));
    assertEquals(Optional.of(Bench.screw(6, 25)), shelf.choose(15, 14, false));
    assertEquals(Optional.empty(), ScrewShelf.of(Bench.screw(8, 32)).choose(18, 16.9, false));
  }

  @Test
  void choose_neverAPocketScrew() {
    ScrewShelf pocket = ScrewShelf.of(new Screw(new ScrewGauge(8), 50, true));
    assertEquals(Optional.empty(), pocket.choose(18, 72, true));
  }

  /** Whatever is chosen obeys the rules, and if any screw holds 6 D, so does the chosen one. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void choose_obeysItsRulesOnRandomShelves(long seed) {
    Random random = new Random(seed);
    int[] numbers = {4, 5, 6, 7, 8, 9, 10, 12, 14};
    for (int i = 0; i < 500; i++) {
      ScrewShelf some =
          new ScrewShelf(
              random
                  .ints(1 + random.nextInt(6), 0, numbers.length)
                  .mapToObj(k -> Bench.screw(numbers[k], 12 + random.nextInt(80)))
                  .toList());
      double through = 6 + 20 * random.nextDouble();
      double into = 6 + 80 * random.nextDouble();
      boolean edge = random.nextBoolean();
      String what = "seed " + seed + ": " + some + " " + through + " " + into + " " + edge;
      boolean anyFull =
          some.screws().stream()
              .anyMatch(
                  s ->
                      s.length() - through >= 6 * s.gauge().shank()
                          && through + into - s.length() >= 3
                          && (!edge || s.gauge().number() <= 8));
      Optional<Screw> chosen = some.choose(through, into, edge);
      assertTrue(!anyFull || chosen.isPresent(), what);
      if (chosen.isPresent()) {
        Screw s = chosen.get();
        assertTrue(through + into - s.length() >= 3 - 1e-6, what);
        assertTrue(!edge || s.gauge().number() <= 8, what);
        assertTrue(!anyFull || s.length() - through >= 6 * s.gauge().shank(), what);
      }
    }
  }

  @Test
  void hingeScrew_isSmallAndSixteenLong() {
    assertEquals(Optional.of(Bench.screw(6, 16)), shelf.hingeScrew(1.2, 18));
    assertEquals(Optional.empty(), shelf.hingeScrew(1.2, 12));
    assertEquals(Optional.empty(), ScrewShelf.of(Bench.screw(8, 16)).hingeScrew(1.2, 18));
  }
}
