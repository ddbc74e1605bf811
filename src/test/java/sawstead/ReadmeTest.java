package sawstead;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;
import sawstead.check.Finding;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/** What the README shows is what the program does. */
class ReadmeTest {

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }

  private static String yaml(String readme, int number) {
    Matcher block = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(readme);
    for (int i = 0; i <= number; i++) {
      assertTrue(block.find(), "the README has a yaml block number " + i);
    }
    return block.group(1);
  }

  @Test
  void smallestBrief_isTheDemo() throws IOException {
    String demo =
        Files.readAllLines(Path.of("models/first-brief.yaml")).stream()
            .filter(line -> !line.startsWith("#"))
            .collect(Collectors.joining("\n", "", "\n"));
    assertEquals(demo, yaml(readme(), 0));
  }

  @Test
  void smallestBriefWithTheOwnUnit_canBeCut() throws Exception {
    String text = yaml(readme(), 0) + yaml(readme(), 2);
    // Read as if it lay beside the demo briefs, where the unit's file is.
    Brief brief = BriefReader.read("models/readme.yaml", text.getBytes(StandardCharsets.UTF_8));
    Report report = Inspector.inspect(Units.station(brief));
    assertTrue(report.station().parts().containsKey("till/lid"));
    assertEquals(
        List.of(), report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList());
  }

  @Test
  void smallestBriefWithTheExtraPanel_canBeCut() throws Exception {
    String text = yaml(readme(), 0) + yaml(readme(), 1);
    Brief brief = BriefReader.read("README.md", text.getBytes(StandardCharsets.UTF_8));
    Report report = Inspector.inspect(Units.station(brief));
    List<Finding> stops =
        report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList();
    assertTrue(report.station().parts().containsKey("jig-rack"));
    assertEquals(
        List.of(),
        stops.stream().filter(f -> !f.about().contains("jig-rack")).toList(),
        "only the example panel, which hangs in the air, may be in the way");
  }

  @Test
  void smallestBriefWithSledsAndInserts_canBeCut() throws Exception {
    String saw =
        yaml(readme(), 0).replaceAll("(?m)^(vac|casters|station):.*\\n|^  workingHeight.*\\n", "");
    String text = saw + yaml(readme(), 3);
    Brief brief = BriefReader.read("README.md", text.getBytes(StandardCharsets.UTF_8));
    Report report = Inspector.inspect(Units.station(brief));
    assertTrue(report.station().parts().containsKey("crosscut/base"));
    assertTrue(report.station().parts().containsKey("small/clamp-arm"));
    assertTrue(report.station().parts().containsKey("zero-clearance/plate"));
    assertEquals(
        List.of(), report.findings().stream().filter(f -> f.severity() != Severity.NOTE).toList());
  }

  @Test
  void smallestBriefWithTheTools_isRead() throws Exception {
    String text = yaml(readme(), 0) + yaml(readme(), 5);
    Brief brief = BriefReader.read("README.md", text.getBytes(StandardCharsets.UTF_8));
    assertTrue(brief.tools().rightAngle().owned());
    assertEquals(40, brief.tools().drill().bit());
  }

  @Test
  void smallestBriefWithPaddleDrawerAndRack_canBeCut() throws Exception {
    String text = yaml(readme(), 0).replace("height: 70}", "height: 70, rating: 100 kg}");
    text += yaml(readme(), 6);
    Brief brief = BriefReader.read("README.md", text.getBytes(StandardCharsets.UTF_8));
    Report report = Inspector.inspect(Units.station(brief));
    for (String part : List.of("paddle/board", "bits/front", "storage/shelf")) {
      assertTrue(report.station().parts().containsKey(part), part);
    }
    assertEquals(
        List.of(), report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList());
  }

  /** Every rule that the code can name stands in the table, and the table names no other. */
  @Test
  void rules_areAllExplained() throws IOException {
    Set<String> inCode = new TreeSet<>();
    Pattern call =
        Pattern.compile(
            "(?:Finding\\.(?:stop|mind|note)\\(|Severity\\.[A-Z]+,|Weight\\.[A-Z]+,)\\s*\"([a-z-]+)\"");
    for (String room : List.of("check", "station")) {
      try (Stream<Path> files = Files.walk(Path.of("src/main/java/sawstead", room))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          Matcher rule = call.matcher(Files.readString(file));
          while (rule.find()) {
            inCode.add(rule.group(1));
          }
        }
      }
    }
    assertTrue(inCode.size() > 20, "found " + inCode);
    String table = readme();
    List<String> missing =
        inCode.stream().filter(rule -> !table.contains("`" + rule + "`")).toList();
    assertEquals(List.of(), missing);
  }
}
