package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  /** One panel of one's own: the quickest brief there is. */
  private static final String SHELF =
      """
      name: Shelf
      units: mm
      stock:
        - {name: ply, nominal: 18 mm, length: 2440, width: 1220, thickness: 18}
      extras:
        - {id: rack/low, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,0,0]}}
      """;

  /** A second panel 10 mm into the first. */
  private static final String CLASHING =
      SHELF
          + "  - {id: rack/high, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at:"
          + " [0,0,8]}}\n";

  @TempDir private Path folder;

  @AfterEach
  void forgetTrace() {
    System.clearProperty(Main.TRACE);
  }

  private String brief(String text) throws IOException {
    Path file = folder.resolve("brief.yaml");
    Files.writeString(file, text);
    return file.toString();
  }

  @Test
  void check_ofABriefThatIsFine_exits0() throws IOException {
    Captured run = Captured.run("check", brief(SHELF));
    assertEquals(0, run.code(), run.err());
    assertEquals("Shelf: clear to cut; no saw, only panels of your own", run.outLines().get(0));
    assertEquals("", run.err());
  }

  @Test
  void check_ofAClash_exits1AndSaysItInThreeLines() throws IOException {
    Captured run = Captured.run("check", brief(CLASHING));
    assertEquals(1, run.code());
    assertTrue(run.outLines().get(0).startsWith("Shelf: do not cut: one reason"), run.out());
    int at = run.outLines().indexOf("stop  rack/high and rack/low overlap by 10 mm  [clash]");
    assertTrue(at > 0, run.out());
    assertEquals(
        "      rack/high, rack/low at x 200 mm, y 50 mm, z 13 mm", run.outLines().get(at + 1));
    assertEquals("      move or shorten one of the two by 10 mm", run.outLines().get(at + 2));
  }

  @Test
  void check_withJson_printsTheReportAndNothingElse() throws IOException {
    Captured run = Captured.run("check", brief(CLASHING), "--json");
    assertEquals(1, run.code());
    JsonNode root = new ObjectMapper().readTree(run.out());
    assertEquals("sawstead-report/1", root.get("format").asText());
    assertEquals(1, root.get("clashes").size());
    assertEquals("", run.err());
  }

  @Test
  void check_ofAFileThatIsNotThere_exits2() {
    Captured run = Captured.run("check", folder.resolve("none.yaml").toString());
    assertEquals(2, run.code());
    assertEquals("stop  there is no such file", run.errLines().get(0));
    assertEquals("", run.out());
  }

  @Test
  void check_ofAMistypedKey_namesFileLineAndNearestKey() throws IOException {
    String file = brief(SHELF.replace("thickness:", "thicknes:"));
    Captured run = Captured.run("check", file);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("thicknes"), run.err());
    assertTrue(run.err().contains(file + ":4"), run.err());
    assertTrue(run.err().contains("`thickness`"), run.err());
  }

  @Test
  void check_ofSeveralProblems_tellsThemAllAtOnce() throws IOException {
    String text = SHELF.replace("thickness: 18", "thickness: -3, densty: 600");
    Captured run = Captured.run("check", brief(text));
    assertEquals(2, run.code());
    assertEquals(2, run.errLines().stream().filter(l -> l.startsWith("stop  ")).count(), run.err());
  }

  @Test
  void check_ofABriefFromWhichNoStationFollows_namesFileLineAndPlace() throws IOException {
    String text = Files.readString(Path.of("models/first-brief.yaml"));
    String file =
        brief(
            text
                + "\ncuts:\n  - {panel: stand/roof, cuts: [{circle: {at: [10,10], diameter: 5}}]}\n");
    long line = text.lines().count() + 3;
    Captured run = Captured.run("check", file);
    assertEquals(2, run.code(), run.out() + run.err());
    assertTrue(run.err().contains(file + ":" + line + ", cuts[0].panel"), run.err());
  }

  @ParameterizedTest
  @CsvSource({
    "chek x.yaml, sawstead check",
    "check, sawstead check",
    "check a.yaml --jsn, --json",
    "check a.yaml b.yaml, sawstead check",
    "'', sawstead --help",
    "build, sawstead build",
    "--nonsense, sawstead",
  })
  void run_ofArgumentsThatCannotBe_exits2(String words, String hint) {
    String[] args = words.isEmpty() ? new String[0] : words.split(" ");
    Captured run = Captured.run(args);
    assertEquals(2, run.code(), run.err());
    assertEquals(3, run.errLines().size(), run.err());
    assertTrue(run.err().contains(hint), run.err());
    assertEquals("", run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "--version", "check --help", "build --help", "schema --help"})
  void run_ofHelp_exits0(String words) {
    Captured run = Captured.run(words.split(" "));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("sawstead"), run.out());
    assertEquals("", run.err());
  }

  @Test
  void schema_printsJson() throws IOException {
    Captured run = Captured.run("schema");
    assertEquals(0, run.code());
    JsonNode schema = new ObjectMapper().readTree(run.out());
    assertEquals("https://json-schema.org/draft/2020-12/schema", schema.get("$schema").asText());
  }

  @Test
  void run_ofACommandThatBreaks_exits3WithoutAStackTrace() {
    Captured run =
        Captured.runBroken(
            () -> {
              throw new IllegalStateException("inner words");
            });
    assertEquals(3, run.code());
    assertEquals(3, run.errLines().size(), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
    assertTrue(run.err().contains("a fault of the program, not of your brief"), run.err());
    assertTrue(run.err().contains("report it"), run.err());
  }

  @Test
  void run_ofACommandThatRunsOutOfStack_exits3() {
    Captured run =
        Captured.runBroken(
            () -> {
              throw new StackOverflowError();
            });
    assertEquals(3, run.code());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @Test
  void run_ofACommandThatBreaks_showsDetailsWhenAsked() {
    System.setProperty(Main.TRACE, "true");
    Captured run =
        Captured.runBroken(
            () -> {
              throw new IllegalStateException("inner words");
            });
    assertEquals(3, run.code());
    assertTrue(run.err().contains("inner words"), run.err());
  }

  @Test
  void check_withoutATerminal_hasNoColours() throws IOException {
    assertFalse(Captured.run("check", brief(CLASHING)).out().contains("\u001b"));
    assertTrue(Captured.run(true, "check", brief(CLASHING)).out().contains("\u001b[31mstop"));
  }

  @Test
  void build_writesWhatTheReportNames() throws IOException {
    Path out = folder.resolve("out");
    Captured run = Captured.run("build", brief(SHELF), "--out", out.toString());
    assertEquals(0, run.code(), run.err());
    JsonNode root = new ObjectMapper().readTree(out.resolve("report.json").toFile());
    String stl = root.get("bodies").get(0).get("stl").asText();
    // 84 bytes and 50 for each of the twelve triangles of a box.
    assertEquals(84 + 12 * 50, Files.size(out.resolve(stl)));
    assertTrue(Files.exists(out.resolve("stl/station.stl")));
  }

  @Test
  void build_withAscii_writesText() throws IOException {
    Path out = folder.resolve("out");
    Captured.run("build", brief(SHELF), "--out", out.toString(), "--ascii");
    assertTrue(Files.readString(out.resolve("stl/rack/low.stl")).startsWith("solid"));
  }

  @Test
  void build_ofAStationThatMustNotBeCut_writesAndExits1() throws IOException {
    Path out = folder.resolve("out");
    Captured run = Captured.run("build", brief(CLASHING), "--out", out.toString());
    assertEquals(1, run.code());
    assertTrue(Files.exists(out.resolve("report.json")));
    assertTrue(run.out().contains("not to cut from"), run.out());
  }

  @Test
  void build_ofABadBrief_writesNothing() throws IOException {
    Path out = folder.resolve("out");
    Captured run =
        Captured.run("build", brief(SHELF.replace("18 mm", "[")), "--out", out.toString());
    assertEquals(2, run.code());
    assertFalse(Files.exists(out));
  }

  @Test
  void build_intoAFolderOfSomebodyElse_exits2AndLeavesIt() throws IOException {
    Path out = Files.createDirectory(folder.resolve("photos"));
    Files.writeString(out.resolve("dog.txt"), "dog");
    Captured run = Captured.run("build", brief(SHELF), "--out", out.toString());
    assertEquals(2, run.code(), run.out());
    try (Stream<Path> files = Files.list(out)) {
      assertEquals(List.of("dog.txt"), files.map(p -> p.getFileName().toString()).toList());
    }
  }

  @Test
  void build_intoAFile_exits2() throws IOException {
    Path out = Files.writeString(folder.resolve("file"), "x");
    Captured run = Captured.run("build", brief(SHELF), "--out", out.resolve("deep").toString());
    assertEquals(2, run.code());
    assertEquals(3, run.errLines().size(), run.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"chandler-row", "first-brief", "granary-loft", "lantern-alley", "quay-shed"})
  void check_ofADemoBrief_doesNotForbidCutting(String name) {
    Captured run = Captured.run("check", "models/" + name + ".yaml");
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.outLines().get(0).contains("working height"), run.out());
    assertTrue(run.outLines().get(1).contains(" = "), run.out());
  }
}
