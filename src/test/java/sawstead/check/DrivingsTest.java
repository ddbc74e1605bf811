package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sawstead.assembly.Assembly;
import sawstead.assembly.BuildPlan;
import sawstead.assembly.Driving;
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

  private static BuildPlan plan(double lidAt, String... steps) {
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
    return Assembly.plan(station, 0.05);
  }

  private static int stepOf(BuildPlan plan, String part) {
    return plan.steps().stream()
        .filter(step -> step.places().contains(part))
        .findFirst()
        .orElseThrow()
        .number();
  }

  @Test
  void plan_ofAScrewUnderALaterLid_keepsTheOrderTold() {
    BuildPlan plan = plan(60, "a/low", "a/high", "b/lid");
    Driving driving = plan.drivings().get(0);
    assertEquals(2, driving.step());
    assertTrue(driving.reachable());
    assertEquals(3, stepOf(plan, "b/lid"));
  }

  /** Told in an order in which no tool reaches the screw: the lid is put off until it is driven. */
  @Test
  void plan_ofAScrewUnderAnEarlierLid_putsTheLidLater() {
    BuildPlan plan = plan(60, "a/low", "b/lid", "a/high");
    Driving driving = plan.drivings().get(0);
    assertTrue(driving.reachable());
    assertTrue(driving.step() < stepOf(plan, "b/lid"), plan.steps().toString());
    assertTrue(
        plan.steps().stream()
            .anyMatch(s -> s.cautions().stream().anyMatch(c -> c.contains("b/lid"))),
        "it says why");
  }

  @Test
  void plan_ofAScrewUnderALidFarAbove_keepsTheOrderTold() {
    // Head at z 36; the screwdriver is 230 long, so a lid at 270 is beyond it, one at 260 is not.
    assertEquals(2, stepOf(plan(270, "a/low", "b/lid", "a/high"), "b/lid"));
    assertEquals(3, stepOf(plan(260, "a/low", "b/lid", "a/high"), "b/lid"));
  }

  @Test
  void plan_ofAScrewDrivenOnTheBench_isReachableWhateverStandsElsewhere() {
    BuildPlan plan = plan(60, "b/lid", "a/low a/high");
    assertTrue(plan.drivings().get(0).reachable());
    assertEquals(2, plan.drivings().get(0).step());
  }
}
