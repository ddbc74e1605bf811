package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemsTest {

  @Test
  void add_keepsTheFirstWordOnAPath_inTheOrderOfTheFile() {
    Problems problems = new Problems();
    problems.add(9, "b", "first", "do");
    problems.add(9, "b", "second", "do");
    problems.add(3, "c", "third", "do");
    assertEquals(
        List.of("third", "first"), problems.inOrder().stream().map(BriefProblem::what).toList());
  }

  @Test
  void has_looksAboveAndBelow() {
    Problems problems = new Problems();
    problems.add(1, "saw.slots[0].at", "what", "do");
    assertTrue(problems.hasBelow("saw") && problems.hasBelow("saw.slots") && problems.hasBelow(""));
    assertFalse(problems.hasBelow("saw.slot") || problems.hasBelow("saw.slots[0].at.x"));
    problems.add(1, "saw.dust", "what", "do");
    assertTrue(problems.hasAbove("saw.dust.diameter"));
    assertFalse(problems.hasAbove("saw.dust") || problems.hasAbove("saw.dusty.x"));
  }
}
