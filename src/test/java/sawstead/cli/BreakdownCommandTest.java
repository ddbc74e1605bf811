package sawstead.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class BreakdownCommandTest {
  @TempDir Path folder;

  private record Outcome(int code, String out, String err) {}

  private Outcome run(String list, String... options) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(file, list);
    List<String> arguments = new ArrayList<>(List.of(file.toString(), "--seconds", "0.02"));
    arguments.addAll(List.of(options));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        new CommandLine(new BreakdownCommand())
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments.toArray(String[]::new));
    return new Outcome(code, out.toString(), err.toString());
  }

  private static final String LIST =
      "part,length,width,quantity,grain\nside,600,250,4,along\nback,900,250,2,across\n";

  @Test
  void breakdown_ofAGoodList_printsTheVerdictFirst() throws Exception {
    Outcome outcome = run(LIST, "--sheet", "2440x1220", "--kerf", "3.2", "--trim", "5");
    assertEquals(0, outcome.code(), outcome.err());
    assertTrue(outcome.out().startsWith("1 sheet (proven: no plan needs fewer)"), outcome.out());
    assertTrue(outcome.out().contains("4 x side 600 x 250"), outcome.out());
    assertTrue(outcome.out().contains("2 x back 250 x 900 turned"), outcome.out());
  }

  @Test
  void breakdown_asJson_isJsonAlone() throws Exception {
    Outcome outcome = run(LIST, "--sheet", "2440x1220", "--json");
    JsonNode root = new ObjectMapper().readTree(outcome.out());
    assertEquals(1, root.get("lowerBound").asInt());
    assertEquals(6, root.get("sheets").get(0).get("pieces").size());
    assertEquals("", outcome.err());
  }

  @Test
  void breakdown_twice_printsTheSame() throws Exception {
    Outcome first = run(LIST, "--sheet", "2440x1220");
    assertEquals(first, run(LIST, "--sheet", "2440x1220"));
    assertEquals(first, run(LIST, "--sheet", "2440.0 mm \u00d7 1220 mm"));
  }

  @Test
  void breakdown_withOffcut_usesIt() throws Exception {
    Outcome outcome =
        run("part,length,width\na,300,300\n", "--sheet", "2440x1220", "--offcut", "rack-3=800x600");
    assertTrue(outcome.out().startsWith("0 sheets and 1 from offcuts"), outcome.out());
  }

  @Test
  void badList_exitsWithTwoAndSaysWhatWhereAndWhatToDo() throws Exception {
    Outcome outcome = run("part,length,width\ntop,2500,600\n", "--sheet", "2440x1220");
    assertEquals(2, outcome.code());
    assertEquals("", outcome.out());
    String[] lines = outcome.err().split("\\R");
    assertEquals("stop: part 'top' (2500 mm x 600 mm) is larger than any sheet", lines[0]);
    assertTrue(lines[1].endsWith("list.csv:2"), lines[1]);
    assertTrue(lines[2].contains("make it at most 2440 mm x 1220 mm"), lines[2]);
  }

  @Test
  void badOptions_exitWithTwo() throws Exception {
    assertEquals(2, run(LIST, "--sheet", "2440").code());
    assertEquals(2, run(LIST, "--sheet", "2440x").code());
    assertEquals(2, run(LIST, "--sheet", "2440x1220x18").code());
    assertEquals(2, run(LIST, "--sheet", "0x1220").code());
    assertEquals(2, run(LIST, "--sheet", "2440x1220", "--kerf", "3,2").code());
    assertEquals(2, run(LIST, "--sheet", "2440x1220", "--kerf", "-1").code());
    assertEquals(2, run(LIST, "--sheet", "2440x1220", "--trim", "NaN").code());
    assertEquals(2, run(LIST, "--sheet", "2440x1220", "--seconds", "0").code());
    assertEquals(2, run(LIST).code());
  }

  @Test
  void kerfWithUnit_isThePlainNumber() throws Exception {
    assertEquals(
        run(LIST, "--sheet", "2440x1220", "--kerf", "3.2 mm"),
        run(LIST, "--sheet", "2440x1220", "--kerf", "3.2"));
  }
}
