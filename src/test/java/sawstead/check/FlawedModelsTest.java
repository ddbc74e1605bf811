package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
  /** Rules that count by what they are about as well. */
  private static final Set<String> BY_WHAT = Set.of("motion-blocked", "screw-unreachable");

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

  /** A blocked motion or screw counts by what it is and meets, since that is what is wrong. */
  @Test
  void models_areMany_andEachHasAFlawOfItsOwn() throws IOException {
    Map<String, Set<String>> flaws = new TreeMap<>();
    for (String name : models()) {
      for (String line : Files.readAllLines(FOLDER.resolve(name + ".findings"))) {
        if (line.startsWith("stop ")) {
          String rule = line.split(" ")[1];
          flaws
              .computeIfAbsent(BY_WHAT.contains(rule) ? line : rule, k -> new TreeSet<>())
              .add(name);
        }
      }
    }
    assertTrue(models().size() >= 6, models().toString());
    Set<String> single = new TreeSet<>();
    flaws.values().stream().filter(m -> m.size() == 1).forEach(single::addAll);
    assertEquals(new TreeSet<>(models()), single, flaws.toString());
  }
}
