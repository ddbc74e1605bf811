package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/**
 * The vac of a flawed model, with other heights: legs of 545 mm less stretchers of 90 mm leave a
 * doorway of 455 mm, worked by hand.
 */
class ExitsTest {
  private static Exit vac(double height, boolean open) {
    try {
      String text = Files.readString(Path.of("models/flawed/tall-vac.yaml"));
      text = text.replace("height: 500, lidRoom", "height: " + height + ", lidRoom");
      if (open) {
        text = text.replace("front: stretchers", "front: open");
      }
      BuildPlan plan =
          Assembly.plan(
              Units.station(BriefReader.read("vac.yaml", text.getBytes(StandardCharsets.UTF_8))),
              0.05);
      return plan.exits().stream().filter(e -> e.id().equals("vac/body")).findFirst().orElseThrow();
    } catch (IOException | BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  /** Within 0.05 mm of the doorway's height the verdict flips. */
  @ParameterizedTest
  @CsvSource({"454, FREE", "455, FREE", "455.05, AFTER", "456, AFTER", "500, AFTER"})
  void all_underAScrewedStretcher_flipsAtTheDoorway(double height, Exit.Verdict verdict) {
    Exit exit = vac(height, true);
    assertEquals(verdict, exit.verdict());
    assertEquals(
        verdict == Exit.Verdict.AFTER ? List.of("stand/stretcher-front-upper") : List.of(),
        exit.first());
  }

  /** Below the doorway's top it comes out with as much air as there is: 455 - 430. */
  @Test
  void all_ofALowVac_hasTheGapOfTheDoorway() {
    assertEquals(25, vac(430, true).least(), 0.01);
  }

  @Test
  void all_behindGluedStretchers_isProvenToBeLocked() {
    Exit exit = vac(500, false);
    assertEquals(Exit.Verdict.NONE, exit.verdict());
    assertTrue(exit.obstacles().contains("stand/stretcher-front-upper"));
    // The lower stretcher stands 90 mm in its way, the upper one 45.
    assertEquals(90, exit.lacks(), 1e-6);
  }

  /** A board that goes right through the vac: no way out, and no fault of the program. */
  @Test
  void all_ofAVacThatOverlapsABoard_isAnswered() throws Exception {
    String text = Files.readString(Path.of("models/flawed/tall-vac.yaml"));
    String board =
        """
        extras:
          - id: through
            stock: %s
            outline: [[0, 0], [900, 0], [900, 500], [0, 500]]
            place: {at: [-400, 0, 300]}
        """
            .formatted(text.replaceAll("(?s).*stock:.*?name: ([a-z0-9-]+).*", "$1"));
    BuildPlan plan =
        Assembly.plan(
            Units.station(
                BriefReader.read("vac.yaml", (text + board).getBytes(StandardCharsets.UTF_8))),
            0.05);
    Exit exit =
        plan.exits().stream().filter(e -> e.id().equals("vac/body")).findFirst().orElseThrow();
    assertTrue(exit.verdict() != Exit.Verdict.FREE, exit.toString());
  }
}
