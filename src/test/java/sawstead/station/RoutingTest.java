package sawstead.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.unit.Units;

class RoutingTest {
  /** Those that have a station; the others have nothing to route. */
  static List<Path> demos() throws BriefException {
    List<Path> demos = new ArrayList<>();
    for (Path file : Briefs.demos()) {
      if (Units.station(BriefReader.read(file)).site().isPresent()) {
        demos.add(file);
      }
    }
    assertTrue(demos.size() >= 4, demos.toString());
    return demos;
  }

  /** By hand: 11 deep is 10.4 and 0.6; 10.4 / 3 needs four passes, 10.4 / 6 two. */
  @Test
  void passes_areNoDeeperThanTheShankAllows() {
    assertEquals(List.of(2.6, 5.2, 10.4 * 3 / 4, 10.4, 11.0), Routing.passes(11, 6));
    assertEquals(List.of(5.2, 10.4, 11.0), Routing.passes(11, 12.7));
    assertEquals(List.of(0.5), Routing.passes(0.5, 6));
  }

  /** By hand: a groove from 200 to 230 in a panel from 0 to 600, bit 12, base 150. */
  @Test
  void guides_areHalfABaseFromTheMiddleOfTheBit() {
    Box panel = new Box(Vec.ZERO, new Vec(600, 300, 18));
    List<Routing.Guide> guides = Routing.guides(200, 230, 12, 75, panel);
    assertEquals(new Routing.Guide("left", 131, 206), guides.get(0));
    assertEquals(new Routing.Guide("right", 301, 224), guides.get(1));
    // 18 between the lanes, 9.6 at most from one to the next: one lane in the middle.
    assertEquals(List.of(new Routing.Guide("left", 140, 215)), guides.subList(2, 3));
    assertEquals(
        List.of(new Routing.Guide("left", 131, 206)), Routing.guides(200, 212, 12, 75, panel));
  }

  /** What the plan cuts is the groove: every lane inside, no strip left, no wall missed. */
  @ParameterizedTest
  @MethodSource("demos")
  void of_aDemo_cutsTheGrooveAndNothingElse(Path file) throws Exception {
    Station station = Units.station(BriefReader.read(file));
    List<Routing> routings = Routing.of(station.site().orElseThrow(), station.boards().values());
    // On the loft's heavy saw a bar ends before the outfeed begins.
    assertEquals(file.endsWith("granary-loft.yaml"), routings.isEmpty());
    for (Routing r : routings) {
      double reached = r.left();
      for (Routing.Guide g :
          r.guides().stream().sorted((a, b) -> Double.compare(a.middle(), b.middle())).toList()) {
        assertTrue(g.middle() - r.bit() / 2 <= reached + 1e-9, r.toString());
        assertTrue(g.middle() - r.bit() / 2 >= r.left() - 1e-9, r.toString());
        assertTrue(g.middle() + r.bit() / 2 <= r.right() + 1e-9, r.toString());
        reached = g.middle() + r.bit() / 2;
      }
      assertEquals(r.right(), reached, 1e-9);
      assertEquals(r.depth(), r.passes().get(r.passes().size() - 1), 1e-12);
    }
  }
}
