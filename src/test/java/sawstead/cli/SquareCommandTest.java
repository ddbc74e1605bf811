package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class SquareCommandTest {

  private static final String[] EXAMPLE = {
    "square", "--a", "25.40", "--b", "25.10", "--length", "500", "--screw", "600"
  };

  private static String[] with(String... more) {
    String[] all = java.util.Arrays.copyOf(EXAMPLE, EXAMPLE.length + more.length);
    System.arraycopy(more, 0, all, EXAMPLE.length, more.length);
    return all;
  }

  /** REF-FIV-02. */
  @Test
  void square_ofTheExample_saysWhichWayAndHowFar() {
    Captured said = Captured.run(EXAMPLE);
    assertEquals(0, said.code(), said.err());
    assertEquals(
        "move the fence's right end toward you by 0.090 mm, measured 600 mm from the pivot",
        said.outLines().get(0));
    assertTrue(said.out().contains("0.0086 degrees counter-clockwise"), said.out());
    assertTrue(said.out().contains("feeler gauges: 0.090 = 0.090 mm"), said.out());
  }

  @Test
  void square_ofEachConvention_turnsTheAdvice() {
    assertTrue(
        Captured.run(with("--pivot", "right")).out().startsWith("move the fence's left end away"));
    assertTrue(
        Captured.run(with("--stays", "right")).out().startsWith("move the fence's right end away"));
    assertTrue(
        Captured.run(with("--a-end", "far")).out().startsWith("move the fence's right end away"));
  }

  /** REF-FIV-02 in inches: 0.0036 in at 24 in. */
  @Test
  void square_inInches_answersInInches() {
    Captured said =
        Captured.run(
            "square", "--inch", "--a", "1.000", "--b", "0.988", "--length", "20", "--screw", "24");
    assertTrue(said.out().contains("toward you by 0.0036 in"), said.out());
  }

  @Test
  void square_insideTheNoise_saysDoNotMoveIt() {
    Captured said =
        Captured.run("square", "--a", "25.40", "--b", "25.39", "--length", "500", "--screw", "600");
    assertTrue(said.out().startsWith("do not move the fence"), said.out());
  }

  @Test
  void square_asJson_isJsonAlone() throws Exception {
    JsonNode root = new ObjectMapper().readTree(Captured.run(with("--json")).out());
    assertEquals(-0.09, root.get("move").asDouble(), 1e-7);
    assertEquals(0.0085944, root.get("degrees").asDouble(), 5e-8);
    assertEquals(0.09, root.get("leaves").get(0).asDouble());
  }

  @Test
  void square_byTriangleAndTrySquare_answersToo() {
    Captured triangle =
        Captured.run(
            "square",
            "--along-fence",
            "300",
            "--along-kerf",
            "400",
            "--diagonal",
            "503",
            "--screw",
            "600");
    assertTrue(triangle.out().startsWith("move the fence's right end toward you"), triangle.out());
    Captured gap = Captured.run("square", "--gap", "0.5", "--length", "180", "--screw", "600");
    assertTrue(gap.out().startsWith("move the fence's right end toward you"), gap.out());
  }

  @Test
  void square_withBadInput_saysWhatToWrite() {
    Captured said = Captured.run("square", "--a", "x", "--length", "500", "--screw", "0");
    assertEquals(2, said.code());
    assertTrue(said.err().contains("--b is missing"), said.err());
    assertEquals(2, Captured.run("square", "--screw", "600").code());
    assertEquals(2, Captured.run(with("--gap", "1")).code());
    assertEquals(2, Captured.run(with("--pivot", "top")).code());
    assertEquals(2, Captured.run(with("--leaves", "0.05,9")).code());
    assertEquals(
        2,
        Captured.run(
                "square",
                "--along-fence",
                "300",
                "--along-kerf",
                "400",
                "--diagonal",
                "900",
                "--screw",
                "600")
            .code());
  }
}
