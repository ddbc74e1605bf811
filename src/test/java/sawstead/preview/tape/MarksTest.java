package sawstead.preview.tape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.measure.Unit;

class MarksTest {
  private static Run run(Run.Scale scale, double from, double to) {
    return new Run("x", Optional.empty(), scale, from, to, from, Optional.empty(), "");
  }

  @Test
  void of_inches_areOnTheMarksOfARule() {
    List<Marks.Mark> marks = Marks.of(run(Run.Scale.LENGTH, 0, 10 * 25.4), Unit.INCH, 1000, 44);
    // 1000 pixels for 10 in: every sixteenth is 6.25 pixels from the next.
    assertEquals(161, marks.size());
    List<String> numbers =
        marks.stream().map(Marks.Mark::number).filter(n -> !n.isEmpty()).toList();
    assertEquals(
        List.of(
            "0", "1/2", "1", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "4-1/2", "5", "5-1/2", "6",
            "6-1/2", "7", "7-1/2", "8", "8-1/2", "9", "9-1/2", "10"),
        numbers);
    assertEquals(25.4 / 16, marks.get(1).at(), 1e-9);
  }

  @Test
  void of_stepsBackwards_areWholeNumbers() {
    List<Marks.Mark> marks = Marks.of(run(Run.Scale.STEPS, 0, 15), Unit.MM, 900, 44);
    assertTrue(
        marks.stream().filter(m -> m.rank() == 0).allMatch(m -> m.at() == Math.rint(m.at())));
  }

  @Test
  void of_aSlideBelowZero_coversTheWholeRange() {
    List<Marks.Mark> marks = Marks.of(run(Run.Scale.LENGTH, -198.4, 0), Unit.MM, 900, 44);
    // 900 pixels for 198.4 mm: a millimetre is 4.5 pixels, too fine to tell apart; so every 5 mm.
    assertEquals(-195, marks.get(0).at(), 1e-9);
    assertEquals(0, marks.get(marks.size() - 1).at(), 1e-9);
  }
}
