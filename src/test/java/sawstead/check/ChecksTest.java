package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sawstead.station.Station;

/** What every check must do, whatever it asks. */
class ChecksTest {
  private static final List<String> DEMOS =
      List.of("first-brief", "granary-loft", "lantern-alley", "quay-shed");

  @Test
  void all_asksEachCheckOnce() {
    Set<String> names = new TreeSet<>();
    Checks.ALL.forEach(c -> assertTrue(names.add(c.getClass().getSimpleName()), names.toString()));
  }

  @Test
  void all_namesEveryCheckThereIs() throws IOException {
    List<String> files;
    try (Stream<Path> list = Files.list(Path.of("src/main/java/sawstead/check"))) {
      files =
          list.map(f -> f.getFileName().toString())
              .filter(n -> n.endsWith("Check.java") && !n.equals("Check.java"))
              .map(n -> n.substring(0, n.length() - ".java".length()))
              .sorted()
              .toList();
    }
    List<String> asked =
        Checks.ALL.stream().map(c -> c.getClass().getSimpleName()).sorted().toList();
    assertEquals(files, asked);
  }

  @Test
  void judge_ofTheSameStation_saysTheSame() {
    for (String demo : DEMOS) {
      Station station = Models.station(demo);
      assertEquals(Inspector.inspect(station), Inspector.inspect(station), demo);
    }
  }

  @Test
  void judge_ofADemo_isAboutSomethingThatIsThere() {
    for (String demo : DEMOS) {
      Report report = Inspector.inspect(Models.station(demo));
      for (Finding finding : report.findings()) {
        assertFalse(finding.about().isEmpty(), demo + ": " + finding);
        assertFalse(finding.says().endsWith("."), demo + ": " + finding);
      }
    }
  }

  @Test
  void judge_ofADemo_isNoNoise() {
    for (String demo : DEMOS) {
      List<Finding> findings = Inspector.inspect(Models.station(demo)).findings();
      List<String> rules = new ArrayList<>();
      findings.forEach(f -> rules.add(f.severity().word() + " " + f.rule()));
      assertTrue(findings.size() <= 12, demo + ": " + rules);
    }
  }
}
