package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import sawstead.intake.BriefReader;
import sawstead.walk.Drawings;

class WalkCommandTest {
  @TempDir private Path folder;

  private String walk(Path file, String typed) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
    Streams streams = new Streams(print, print, StandardCharsets.UTF_8, false);
    WalkCommand command =
        new WalkCommand(streams, new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    Main main = new Main(streams);
    CommandLine line = main.commandLine();
    line.addSubcommand("walk-here", command);
    main.run(line, "walk-here", file.toString());
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String unknown(int times) {
    return String.join("", Collections.nCopies(times, "unknown\n"));
  }

  @Test
  void stoppedAndResumed_writesABriefThatIsRead() throws Exception {
    Path file = folder.resolve("shed.yaml");
    String first = walk(file, "Shed\ninch\njobsite\n26-1/2\nback\n26-3/8\nstop\n");
    assertTrue(first.contains("kept: "), first);
    assertTrue(first.contains("<====="), "the width has its arrow");
    assertFalse(Files.exists(file));
    String second = walk(file, unknown(200));
    assertTrue(second.contains("going on after 4 answers"), second);
    assertTrue(second.contains("written: "), second);
    assertFalse(Files.exists(folder.resolve("shed.yaml.answers")));
    // 26-3/8 in is 669.925 mm (REF-NUM-01: 25.4 mm to the inch).
    assertEquals(
        669.925, BriefReader.read(file).saw().orElseThrow().table().width().nominal(), 1e-9);
  }

  @Test
  void answerThatCannotBe_isAskedAgain() {
    String said = walk(folder.resolve("a.yaml"), "Shed\nmm\njobsite\n12 apples\n640\n");
    assertTrue(said.contains("no  "), said);
    assertTrue(said.indexOf("table width") < said.lastIndexOf("table width"), said);
  }

  @Test
  void briefThatIsThere_isNotOverwritten() throws Exception {
    Path file = Files.writeString(folder.resolve("b.yaml"), "name: mine\n");
    assertTrue(walk(file, unknown(3)).contains("a brief of this name already"));
    assertEquals("name: mine\n", Files.readString(file));
  }

  @Test
  void textDrawing_hasCornersAndAnArrow() {
    var lines = TextDrawing.lines(Drawings.of("saw.throat.width").orElseThrow());
    assertTrue(lines.get(0).contains("<====="), lines.get(0));
    assertTrue(lines.get(1).strip().matches("\\+-+\\+"), lines.get(1));
  }
}
