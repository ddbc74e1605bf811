package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.assembly.PocketSides;
import sawstead.brief.Brief;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/**
 * Models that are wrong on purpose: each {@code .yaml} has a {@code .findings} beside it that lists
 * every finding of severity stop. One that is missing fails, and one too many does.
 */
class FlawedModelsTest {
  private static final Path FOLDER = Path.of("models/flawed");

  static List<String> models() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(".yaml"))
          .map(n -> n.substring(0, n.length() - ".yaml".length()))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void inspect_ofAFlawedModel_givesExactlyItsStops(String name) throws Exception {
    List<String> expected =
        Files.readAllLines(FOLDER.resolve(name + ".findings")).stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .sorted()
            .toList();
    Brief brief = BriefReader.read(FOLDER.resolve(name + ".yaml"));
    Report report = Inspector.inspect(PocketSides.settled(turned -> Units.station(brief, turned)));
    List<String> found =
        report.findings().stream()
            .filter(f -> f.severity() == Severity.STOP)
            .map(f -> "stop " + f.rule() + " " + String.join(" ", f.about()))
            .sorted()
            .toList();
    assertEquals(String.join("\n", expected), String.join("\n", found));
  }

  @Test
  void models_areMany_andEachFailsInAWayOfItsOwn() throws IOException {
    TreeSet<String> rules = new TreeSet<>();
    TreeSet<String> ways = new TreeSet<>();
    for (String name : models()) {
      List<String> stops =
          Files.readAllLines(FOLDER.resolve(name + ".findings")).stream()
              .filter(line -> line.startsWith("stop "))
              .toList();
      stops.forEach(line -> rules.add(line.split(" ")[1]));
      ways.add(String.join("\n", stops));
    }
    assertTrue(models().size() >= 6, models().toString());
    assertEquals(models().size(), ways.size(), ways.toString());
    // A pocket in a closed box and a tool without room share their rule, and no others do.
    assertTrue(rules.size() >= models().size() - 2, rules.toString());
  }
}
