package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.joinery.Fastener;
import sawstead.solid.Box;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** The wing of a flawed model: a box too narrow for a drill between its walls. */
class PocketSidesTest {
  private static Brief brief(String side) {
    try {
      String text =
          Files.readString(Path.of("models/flawed/closed-pocket.yaml"))
              .replace("pockets: inside", "pockets: " + side);
      return BriefReader.read("pockets", text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException | BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static long undriven(Station station) {
    return Assembly.plan(station, 0.05).drivings().stream()
        .filter(d -> d.fastener().joint().equals("pocket") && !d.reachable())
        .count();
  }

  /** Pockets of a wall whose heads lie behind the middle of its thickness, seen from inside. */
  private static List<String> outside(Station station, String wall) {
    Box box = station.part(wall).orElseThrow().body().box();
    List<String> found = new ArrayList<>();
    for (Fastener f : station.fasteners()) {
      if (f.joint().equals("pocket")
          && f.joins().get(0).equals(wall)
          && f.at().y() > box.centre().y()) {
        found.add(f.id());
      }
    }
    return found;
  }

  @Test
  void settled_putsOutsideWhatNoDrillReachesInside_andNothingElse() {
    Brief brief = brief("auto");
    Set<String> none = Set.of();
    Station inside = Units.station(brief, none);
    Station settled = PocketSides.settled(turned -> Units.station(brief, turned));
    assertTrue(undriven(inside) > 0);
    assertEquals(0, undriven(settled));
    // The rear wall's outside looks to the rear, towards greater y.
    assertEquals(List.of(), outside(inside, "wing-right/rear"));
    assertTrue(!outside(settled, "wing-right/rear").isEmpty());
    assertEquals(
        inside.fasteners().stream().filter(f -> f.id().startsWith("stand/")).toList(),
        settled.fasteners().stream().filter(f -> f.id().startsWith("stand/")).toList());
  }

  @Test
  void settled_whereTheBriefPinsTheSide_leavesItThere() {
    Brief inside = brief("inside");
    assertTrue(undriven(PocketSides.settled(t -> Units.station(inside, t))) > 0);
    Brief outside = brief("outside");
    Station station = PocketSides.settled(t -> Units.station(outside, t));
    assertTrue(!outside(station, "wing-right/rear").isEmpty());
  }

  @Test
  void plan_ofTheSameStation_isKept() {
    Station station = Units.station(brief("inside"));
    assertSame(Assembly.plan(station, 0.05), Assembly.plan(station, 0.05));
  }
}
