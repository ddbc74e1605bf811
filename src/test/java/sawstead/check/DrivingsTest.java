package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;
import sawstead.station.Step;

/** A shelf on a shelf, a screw down through both, and a lid over its head. */
class DrivingsTest {
  private static Part shelf(String id, double z) {
    Body body = new Body(id, Solids.box(400, 100, 18), Placement.at(new Vec(0, 0, z)));
    return new Part(PartKind.PANEL, Optional.of("ply"), 1, body);
  }

  private static Driving driving(double lidAt, String... steps) {
    Map<String, Part> parts = new TreeMap<>();
    for (Part part : List.of(shelf("a/low", 0), shelf("a/high", 18), shelf("b/lid", lidAt))) {
      parts.put(part.id(), part);
    }
    Fastener screw =
        new Fastener(
            "a/high/screw-1",
            FastenerKind.WOOD_SCREW,
            List.of("a/high", "a/low"),
            new Vec(200, 50, 36),
            new Vec(0, 0, -1),
            32,
            4.17,
            2.4,
            7.9,
            true,
            "screw");
    List<Step> list = new ArrayList<>();
    for (String places : steps) {
      list.add(
          new Step(
              list.size() + 1, List.of(places.split(" ")), "put", new Vec(0, 0, -1), List.of()));
    }
    Station station =
        new Station(
            Sample.brief(),
            Optional.empty(),
            parts,
            Map.of(),
            List.of(screw),
            List.of(),
            List.of(),
            list,
            Map.of(),
            List.of(),
            List.of());
    return Drivings.of(station, 0.05).get(0);
  }

  @Test
  void of_aScrewUnderALaterLid_isReachable() {
    Driving driving = driving(60, "a/low", "a/high", "b/lid");
    assertEquals(2, driving.step());
    assertTrue(driving.reachable());
  }

  @Test
  void of_aScrewUnderAnEarlierLid_isNotReachable() {
    Driving driving = driving(60, "a/low", "b/lid", "a/high");
    assertEquals(3, driving.step());
    assertFalse(driving.reachable());
  }

  @Test
  void of_aScrewUnderALidFarAbove_isReachable() {
    // Head at z 36, bit 75 long: a lid at 112 is beyond it, one at 110 is not.
    assertTrue(driving(112, "a/low", "b/lid", "a/high").reachable());
    assertFalse(driving(110, "a/low", "b/lid", "a/high").reachable());
  }

  @Test
  void of_aScrewDrivenOnTheBench_isReachableWhateverStandsElsewhere() {
    Driving driving = driving(60, "b/lid", "a/low a/high");
    assertEquals(2, driving.step());
    assertTrue(driving.reachable());
  }
}
