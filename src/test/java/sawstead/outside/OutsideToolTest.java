package sawstead.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import org.opentest4j.TestAbortedException;

class OutsideToolTest {
  private static final Tool ABSENT =
      new Tool("a reader", List.of("no-such-reader"), List.of(), "Install it.");

  @Test
  void program_ofAToolThatIsNotThere_isEmpty() {
    assertTrue(ABSENT.program().isEmpty());
  }

  @Test
  @ResourceLock(Resources.SYSTEM_PROPERTIES)
  void run_withoutTheTool_skipsAndNamesIt() {
    withRequired(
        "false",
        () -> {
          TestAbortedException skipped =
              assertThrows(TestAbortedException.class, () -> OutsideTool.run(ABSENT, List.of()));
          assertTrue(skipped.getMessage().contains("a reader is missing. Install it."));
        });
  }

  @Test
  @ResourceLock(Resources.SYSTEM_PROPERTIES)
  void run_withoutTheToolWhereToolsAreRequired_fails() {
    withRequired(
        "true", () -> assertThrows(AssertionError.class, () -> OutsideTool.run(ABSENT, List.of())));
  }

  @Test
  void run_ofAProgramThatFails_showsItsComplaint() {
    Tool shell = new Tool("sh", List.of("sh"), List.of("-c", "exit 0"), "");
    AssertionError error =
        assertThrows(
            AssertionError.class,
            () -> OutsideTool.run(shell, List.of(), "-c", "echo broken >&2; exit 7"));
    assertTrue(error.getMessage().contains("code 7"), error.getMessage());
    assertTrue(error.getMessage().contains("broken"), error.getMessage());
  }

  @Test
  void end_ofAProgramThatHangs_stopsIt() {
    OutsideTool.Ended ended = OutsideTool.end(List.of("sleep", "600"), Duration.ofMillis(20));
    assertFalse(ended.inTime());
  }

  /** REF-GEO-01: two unit cubes, one turned 45 degrees about z, share 2(sqrt 2 - 1). */
  @Test
  void independentKernel_onTwoCubesAt45Degrees_givesTheClosedFormula(@TempDir Path folder)
      throws IOException {
    String cube =
        """
        "vertices": [-0.5,-0.5,-0.5, 0.5,-0.5,-0.5, 0.5,0.5,-0.5, -0.5,0.5,-0.5,
                     -0.5,-0.5,0.5, 0.5,-0.5,0.5, 0.5,0.5,0.5, -0.5,0.5,0.5],
        "triangles": [0,2,1, 0,3,2, 4,5,6, 4,6,7, 0,1,5, 0,5,4,
                      1,2,6, 1,6,5, 2,3,7, 2,7,6, 3,0,4, 3,4,7]
        """;
    double c = Math.sqrt(0.5);
    String input =
        ("{\"solids\": [{%s}, {%s, \"placement\": [%s,%s,0,0, %s,%s,0,0, 0,0,1,0, 0,0,0,1]}],"
                + " \"pairs\": [[0, 1]]}")
            .formatted(cube, cube, c, c, -c, c);
    Path file = Files.writeString(folder.resolve("cubes.json"), input);
    JsonNode answer = OutsideTool.node("overlap.mjs", file).json();
    assertEquals("NoError", answer.at("/solids/1/status").asText());
    assertEquals(1, answer.at("/solids/1/volume").asDouble(), 1e-12);
    assertEquals(2 * (Math.sqrt(2) - 1), answer.at("/pairs/0/volume").asDouble(), 1e-9);
  }

  private static void withRequired(String value, Runnable body) {
    String before = System.getProperty("sawstead.toolsRequired");
    System.setProperty("sawstead.toolsRequired", value);
    try {
      body.run();
    } finally {
      if (before == null) {
        System.clearProperty("sawstead.toolsRequired");
      } else {
        System.setProperty("sawstead.toolsRequired", before);
      }
    }
  }
}
