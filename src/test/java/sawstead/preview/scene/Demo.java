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
    return DESIGNED.computeIfAbsent(name, n -> Bench.design(n, text(n)).station().orElseThrow());
  }
}
