package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sawstead.check.Finding;
import sawstead.check.Inspector;
import sawstead.check.Passage;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Briefs;
import sawstead.station.Part;
import sawstead.station.Station;

class RoomUnitTest {
  /** The back of the demo's outfeed without its leaf, and the leaf's overhang, mm. */
  private static final double OVERHANG = 8 * 25.4;

  private static Station station(String room) throws Exception {
    return Units.station(
        Briefs.of(Files.readString(Path.of("models/lantern-alley.yaml")) + "\nroom:\n" + room));
  }

  private static Box box(Station station, String id) {
    return station.part(id).orElseThrow().body().box();
  }

  private static Passage passage(Report report, String id) {
    return report.passages().stream()
        .filter(p -> p.mover().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void walls_standWhereTheyWereMeasured() throws Exception {
    Station station =
        station(
            "  {left: 1500 mm, right: 1600 mm, front: 2000 mm, rear: 1700 mm, height: 2300 mm,"
                + " posts: [{id: beam, x: 1000 mm, y: -500 mm, width: 100 mm, depth: 60 mm}]}\n");
    assertEquals(-1500, box(station, "room/wall-left").high().x());
    assertEquals(1600, box(station, "room/wall-right").low().x());
    assertEquals(-2000, box(station, "room/wall-front").high().y());
    assertEquals(1700, box(station, "room/wall-rear").low().y());
    assertEquals(2300, box(station, "room/wall-rear").high().z());
    assertEquals(
        new Box(new Vec(950, -530, 0), new Vec(1050, -470, 2300)), box(station, "room/beam"));
    assertEquals(List.of(), Inspector.inspect(station).clashes());
  }

  @Test
  void door_fillsItsOpeningAndSwingsIntoTheRoom() throws Exception {
    for (String hinge : List.of("front", "rear")) {
      for (String wall : List.of("left", "right")) {
        Station station =
            station(
                "  {left: 2500 mm, right: 2500 mm, front: 2000 mm, rear: 2400 mm, door: {wall: "
                    + wall
                    + ", at: -800 mm, width: 900 mm, hinge: "
                    + hinge
                    + "}}\n");
        Report report = Inspector.inspect(station);
        assertEquals(List.of(), report.clashes());
        Passage opens = passage(report, "room/door-opens");
        assertTrue(opens.firstContact().isEmpty(), wall + " " + hinge + opens);
        Part door = station.part("room/door").orElseThrow();
        Box open = door.body().moved(opens.mover().motion().at(90)).box();
        double x = wall.equals("left") ? -2500 : 2500;
        assertEquals(
            0, Math.min(Math.abs(open.low().x() - x), Math.abs(open.high().x() - x)), 1e-6);
        assertEquals(894, open.size().x(), 1e-6);
        double pin = hinge.equals("front") ? -800 - 447 : -800 + 447;
        assertEquals(
            0, Math.min(Math.abs(open.low().y() - pin), Math.abs(open.high().y() - pin)), 1e-6);
      }
    }
  }

  /** A leaf w deep and t thick about a pin below its front edge reaches furthest level. */
  @Test
  void leaf_meetsAWallThatIsNearerThanItsOverhang() throws Exception {
    Station free = station("  {rear: 1700 mm}\n");
    double tip = box(free, "outfeed/leaf").high().y();
    assertTrue(stops(free).isEmpty(), () -> stops(free).toString());
    Station near = station("  {rear: " + (tip - 5) + " mm}\n");
    assertTrue(stops(near).stream().anyMatch(f -> f.rule().equals("clash")));
  }

  @Test
  void station_rollsBackWithItsLeafFoldedUntilTheWall() throws Exception {
    Station station = station("  {rear: 1700 mm, rolledBack: 1 mm}\n");
    // With the leaf folded the bars under it are the rearmost; the leaf hangs behind the back.
    double rear =
        station.parts().values().stream()
            .filter(p -> !p.isRoom() && !p.id().startsWith("outfeed/leaf"))
            .mapToDouble(p -> p.body().box().high().y())
            .max()
            .orElseThrow();
    Part leaf = station.part("outfeed/leaf").orElseThrow();
    double folded =
        leaf.body()
            .moved(station.mover(OutfeedLeaf.FOLDS).orElseThrow().motion().at(90))
            .box()
            .high()
            .y();
    double way = 1700 - Math.max(rear, folded);
    assertTrue(way > OVERHANG / 2, "way " + way);
    assertFalse(blocked(way - 0.05), "clears by 0.05");
    assertTrue(blocked(way + 0.11), "meets");
  }

  private static boolean blocked(double by) throws Exception {
    Report report = Inspector.inspect(station("  {rear: 1700 mm, rolledBack: " + by + " mm}\n"));
    return passage(report, "room/station-rolls-back").firstContact().isPresent();
  }

  private static List<Finding> stops(Station station) {
    return Inspector.inspect(station).findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .collect(Collectors.toList());
  }
}
