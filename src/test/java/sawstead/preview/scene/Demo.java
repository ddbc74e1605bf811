package sawstead.preview.scene;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sawstead.outside.OutsideTool;
import sawstead.preview.bench.Bench;
import sawstead.station.Station;

/** The demo briefs and their stations, each designed once. */
public final class Demo {
  private static final Map<String, Station> DESIGNED = new ConcurrentHashMap<>();

  private Demo() {}

  /** The file of a demo. */
  public static Path file(String name) {
    return OutsideTool.project().resolve("models").resolve(name + ".yaml");
  }

  /** Copies a demo and the unit files that it may name to a folder. */
  public static Path copy(String name, Path folder) throws java.io.IOException {
    Path units = Files.createDirectories(folder.resolve("units"));
    try (var files = Files.list(file(name).resolveSibling("units"))) {
      for (Path unit : files.toList()) {
        Files.copy(unit, units.resolve(unit.getFileName()));
      }
    }
    return Files.copy(file(name), folder.resolve(name + ".yaml"));
  }

  /** The text of a demo. */
  public static String text(String name) {
    try {
      return Files.readString(file(name));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** The station of a demo. */
  public static Station station(String name) {
    return DESIGNED.computeIfAbsent(
        name, n -> Bench.design(file(n).toString(), text(n)).station().orElseThrow());
  }
}
