package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;
import sawstead.check.Finding;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.intake.BriefReader;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.DesignException;
import sawstead.station.Site;
import sawstead.station.Station;
import sawstead.station.Unit;
import sawstead.station.UnitSource;

/** Unit files of the demo folder, used as a stranger would use them. */
class DrawnUnitTest {

  private static final Path MODELS = Path.of("models");

  private static Station station(String name, String text) throws Exception {
    return Units.station(BriefReader.read(MODELS.resolve(name).toString(), text.getBytes()));
  }

  private static String till(String with) {
    return """
        name: Till
        units: mm
        stock:
          - {name: w, length: 2440, width: 1220, thickness: 12}
          - {name: f, length: 2440, width: 1220, thickness: 6}
        own:
          - {id: till, file: units/sliding-till.yaml, with: %s, sheets: {wall: w, thin: f}}
        """
        .formatted(with);
  }

  /** Volumes worked by hand from length, width and thickness; no source. */
  @Test
  void till_hasTheVolumesOfItsBoards() throws Exception {
    Station station = station("t.yaml", till("{length: 300, width: 200, height: 100, play: 0.5}"));
    // side 300 x 100 x 12 less a groove of 288 x (6 + 1) x 4
    assertEquals(
        300 * 100 * 12 - 288 * 7 * 4,
        station.part("till/side-left").orElseThrow().body().volume(),
        1e-6);
    // 300 - 12 - 0.5 by 200 - 24 + 2 x (4 - 0.5), less a finger hole of 20 (a polygon inside it)
    double lid = (287.5 * 183 - Math.PI * 100) * 6;
    assertEquals(
        lid, station.part("till/lid").orElseThrow().body().volume(), 0.02 * Math.PI * 20 * 6);
    assertEquals(100 - 6 - 8, station.part("till/lid").orElseThrow().body().box().low().z(), 1e-9);
  }

  /** The flap is 200 deep; a pin is looked for up to 100 mm beside it, and turns about x. */
  @Test
  void hinge_besideWhatItTurns_isRefused() throws Exception {
    assertEquals(1, flap(-99.9).movers().size());
    assertEquals(1, flap(299.9).movers().size());
    for (double off : new double[] {-100.1, 300.1, 1500}) {
      DesignException refused =
          org.junit.jupiter.api.Assertions.assertThrows(
              DesignException.class, () -> flap(off), "at " + off);
      assertTrue(refused.getMessage().contains("beside everything that turns"), refused.toString());
    }
  }

  private static Station flap(double pin) throws Exception {
    Path folder = Files.createTempDirectory("flap");
    Files.writeString(
        folder.resolve("flap.yaml"),
        """
        unit: flap
        says: A flap on a board.
        sheets: {wall: both}
        panels:
          - {id: flap, sheet: wall, size: [400, 200], place: {at: [0, 0, 18]}}
        motions:
          - {id: opens, moves: [flap], turn: {at: [0, %s, 18], direction: [1, 0, 0], to: 90}}
        """
            .formatted(pin));
    String brief =
        """
        name: Flap
        units: mm
        stock: [{name: ply, length: 2440, width: 1220, thickness: 18}]
        own: [{id: flap, file: flap.yaml, sheets: {wall: ply}}]
        """;
    return Units.station(
        BriefReader.read(folder.resolve("flap-brief.yaml").toString(), brief.getBytes()));
  }

  @Test
  void till_ofAnySize_neitherClashesNorJams() throws Exception {
    long seed = 411;
    Random random = new Random(seed);
    for (int i = 0; i < 40; i++) {
      String with =
          "{length: %.1f, width: %.1f, height: %.1f, play: %.2f, divider: %d, x: %.1f, z: %.1f}"
              .formatted(
                  130 + 600 * random.nextDouble(),
                  100 + 280 * random.nextDouble(),
                  70 + 200 * random.nextDouble(),
                  0.1 + 1.3 * random.nextDouble(),
                  random.nextInt(2),
                  200 * random.nextGaussian(),
                  200 * random.nextDouble());
      Report report = Inspector.inspect(station("t.yaml", till(with)));
      List<Finding> stops =
          report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList();
      assertEquals(List.of(), stops, "seed " + seed + ", " + with);
    }
  }

  @Test
  void till_whoseGrooveIsTooShort_stopsTheLid() throws Exception {
    String unit = Files.readString(MODELS.resolve("units/sliding-till.yaml"));
    Path folder = Files.createTempDirectory("own");
    Files.writeString(
        folder.resolve("till.yaml"),
        unit.replace("to: [length - t, under", "to: [length - t - 25, under"));
    Path brief = folder.resolve("t.yaml");
    Files.writeString(brief, till("{}").replace("units/sliding-till", "till"));
    Report report = Inspector.inspect(Units.station(BriefReader.read(brief)));
    assertTrue(
        report.findings().stream().anyMatch(f -> f.severity() == Severity.STOP),
        report.findings().toString());
  }

  /** A rack that hangs on the stand goes where the stand's leg is, whatever sheet it is of. */
  @Test
  void rack_followsTheStand() throws Exception {
    String granary = Files.readString(MODELS.resolve("granary-loft.yaml"));
    Station before = station("granary-loft.yaml", granary);
    Station after = station("granary-loft.yaml", granary.replace("width: 42\n", "width: 41\n"));
    assertEquals(
        before.part("stand/leg-2-side").orElseThrow().body().box().high().x(),
        before.part("sticks/back").orElseThrow().body().box().low().x(),
        1e-9);
    assertEquals(
        before.part("sticks/lip").orElseThrow().body().box().high().x() - 12.7,
        after.part("sticks/lip").orElseThrow().body().box().high().x(),
        1e-9);
  }

  /** A class path with a source of units on it, as a user's own jar would make it. */
  @Test
  void unitsOfAJar_joinTheStation() throws Exception {
    Path jar = Files.createTempDirectory("source");
    Path services = Files.createDirectories(jar.resolve("META-INF/services"));
    Files.writeString(services.resolve(UnitSource.class.getName()), OneBoard.class.getName());
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    try (URLClassLoader with = new URLClassLoader(new URL[] {jar.toUri().toURL()}, before)) {
      thread.setContextClassLoader(with);
      Station station = station("t.yaml", till("{}"));
      assertEquals(100 * 50 * 12, station.part("mine/board").orElseThrow().body().volume(), 1e-6);
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  /** Somebody's own unit in Java. */
  public static final class OneBoard implements UnitSource {
    @Override
    public List<Unit> units(Brief brief, Optional<Site> site) {
      Box box = new Box(new Vec(2000, 0, 0), new Vec(2100, 50, 12));
      return List.of(
          draft -> draft.panel("mine/board", brief.stock().get(0), box, Axis.Z, true, Axis.X));
    }
  }
}
