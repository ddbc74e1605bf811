package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class BriefExceptionTest {

  @Test
  void message_hasThreeLinesForEachProblem() {
    BriefException wrong =
        new BriefException(
            "x.yaml",
            List.of(
                new BriefProblem(0, "", "the file is empty", "write a brief"),
                new BriefProblem(14, "station.legs", "legs are odd", "make them even")));
    assertEquals(
        "the file is empty\n  x.yaml\n  write a brief\n"
            + "legs are odd\n  x.yaml:14, station.legs\n  make them even",
        wrong.getMessage());
  }

  @Test
  void constructors_refuseProblemsWithoutWords() {
    assertThrows(IllegalArgumentException.class, () -> new BriefException("x.yaml", List.of()));
    assertThrows(IllegalArgumentException.class, () -> new BriefProblem(1, "a", " ", "do"));
    assertThrows(IllegalArgumentException.class, () -> new BriefProblem(1, "a", "what", ""));
  }
}
