package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** Plans of whole stations, walked through again without the search. */
class AssemblyTest {
  private static final double CONTACT = 0.05;

  static Station model(String name) {
    try {
      return Units.station(BriefReader.read(java.nio.file.Path.of("models", name + ".yaml")));
    } catch (BriefException e) {
      throw new AssertionError(e);
    }
  }

  static Station extras(String sections) {
    String head =
        """
        name: Sample
        units: mm
        stock:
          - {name: ply, nominal: 18 mm, length: 2440, width: 1220, thickness: 18, density: 600, trim: 5}
        extras:
        """;
    try {
      return Units.station(
          BriefReader.read("sample", (head + sections).getBytes(StandardCharsets.UTF_8)));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"first-brief", "lantern-alley", "quay-shed", "granary-loft", "chandler-row"})
  void plan_ofADemo_placesAndDrivesEverythingOnce(String name) {
    Station station = model(name);
    BuildPlan plan = Assembly.plan(station, CONTACT);
    List<String> placed = plan.steps().stream().flatMap(s -> s.places().stream()).toList();
    assertEquals(station.parts().keySet(), new HashSet<>(placed));
    assertEquals(placed.size(), new HashSet<>(placed).size(), "placed twice");
    List<String> driven = plan.steps().stream().flatMap(s -> s.fasteners().stream()).toList();
    assertEquals(station.fasteners().size(), driven.size());
    assertEquals(driven.size(), new HashSet<>(driven).size(), "driven twice");
    assertEquals(List.of(), plan.stuck());
  }

  @ParameterizedTest
  @ValueSource(strings = {"first-brief", "lantern-alley", "quay-shed", "granary-loft"})
  void plan_ofADemo_reachesEveryScrewWithToolsThatPeopleOwn(String name) {
    BuildPlan plan = Assembly.plan(model(name), CONTACT);
    for (Driving driving : plan.drivings()) {
      if (driving.fastener().kind() != FastenerKind.BOLT) {
        assertTrue(driving.reachable(), driving.fastener().id() + " behind " + driving.inTheWay());
        assertTrue(driving.use().orElseThrow().tool().owned(), driving.fastener().id());
      }
    }
  }

  /**
   * Outside check: each step's way is walked with the kernel's exact overlap, which the search does
   * not use, at 60 places; what stands then is never entered by more than the contact tolerance.
   */
  @ParameterizedTest
  @ValueSource(strings = {"first-brief", "lantern-alley", "quay-shed", "granary-loft"})
  void plan_ofADemo_hasWaysThatCanBeWalked(String name) {
    Station station = model(name);
    List<Body> standing = new ArrayList<>();
    for (BuildStep step : Assembly.plan(station, CONTACT).steps()) {
      List<Body> movers = step.places().stream().map(id -> station.parts().get(id).body()).toList();
      if (!step.places().contains("vac/hose")) {
        walk(step, movers, standing);
      }
      standing.addAll(movers);
    }
  }

  private static void walk(BuildStep step, List<Body> movers, List<Body> standing) {
    Vec at = step.path().stream().reduce(Vec.ZERO, Vec::plus).scale(-1);
    for (Vec leg : step.path()) {
      for (int i = 0; i < 60; i++) {
        // Denser towards the end, where things are near.
        double t = 1 - Math.pow(1 - i / 60.0, 3);
        Vec by = at.plus(leg.scale(t));
        for (Body mover : movers) {
          Body there = mover.moved(Placement.at(by));
          for (Body other : standing) {
            double depth = Overlap.between(there, other).map(Overlap::depth).orElse(0.0);
            double rest = Overlap.between(mover, other).map(Overlap::depth).orElse(0.0);
            assertTrue(
                depth <= CONTACT || rest > CONTACT,
                step.name() + ": " + mover.id() + " in " + other.id() + " at " + by);
          }
        }
      }
      at = at.plus(leg);
    }
  }

  /** Each joined part stands when its fastener is driven, and not later than needed. */
  @Test
  void drivings_happenInTheStepOfTheLastPart() {
    Station station = model("lantern-alley");
    BuildPlan plan = Assembly.plan(station, CONTACT);
    Map<String, Integer> steps = new HashMap<>();
    plan.steps().forEach(s -> s.places().forEach(id -> steps.put(id, s.number())));
    for (Driving driving : plan.drivings()) {
      if (driving.fastener().kind() != FastenerKind.BOLT) {
        int last = driving.fastener().joins().stream().mapToInt(steps::get).max().orElseThrow();
        assertEquals(last, driving.step(), driving.fastener().id());
      }
    }
  }

  @Test
  void plan_isTheSameTwice() {
    assertEquals(
        Assembly.plan(model("quay-shed"), CONTACT), Assembly.plan(model("quay-shed"), CONTACT));
  }

  /** A tray under the top has its screws under the saw: it must be there before the saw. */
  @Test
  void plan_putsTheTrayOnBeforeTheSaw() {
    List<BuildStep> steps = Assembly.plan(model("quay-shed"), CONTACT).steps();
    Set<Integer> trays = new TreeSet<>();
    int saw = 0;
    for (BuildStep step : steps) {
      if (step.places().stream().anyMatch(id -> id.startsWith("tray/"))) {
        trays.add(step.number());
      }
      saw = step.places().contains("saw/body") ? step.number() : saw;
    }
    assertTrue(trays.stream().allMatch(t -> t < steps.size()) && trays.iterator().next() < saw);
  }

  /** A closed box of six panels around a seventh: the inner one is placed before the last wall. */
  @Test
  void plan_ofAClosedBox_putsTheInsideInFirst() {
    Station station = extras(CLOSED);
    BuildPlan plan = Assembly.plan(station, CONTACT);
    List<String> order = plan.steps().stream().flatMap(s -> s.places().stream()).toList();
    assertEquals(List.of(), plan.stuck());
    assertTrue(order.indexOf("core") < order.size() - 1, order.toString());
    assertEquals(new HashSet<>(station.parts().keySet()), new HashSet<>(order));
  }

  private static final String CLOSED =
      """
        - {id: core, stock: ply, outline: [[0,0],[100,0],[100,100],[0,100]], place: {at: [50,50,50]}}
        - {id: floor, stock: ply, outline: [[0,0],[200,0],[200,200],[0,200]], place: {at: [0,0,0]}}
        - {id: roof, stock: ply, outline: [[0,0],[200,0],[200,200],[0,200]], place: {at: [0,0,118]}}
        - {id: left, stock: ply, outline: [[0,0],[200,0],[200,100],[0,100]], place: {at: [18,0,18], turns: [{about: x, degrees: 90}, {about: z, degrees: 90}]}}
        - {id: right, stock: ply, outline: [[0,0],[200,0],[200,100],[0,100]], place: {at: [200,0,18], turns: [{about: x, degrees: 90}, {about: z, degrees: 90}]}}
        - {id: front, stock: ply, outline: [[0,0],[164,0],[164,100],[0,100]], place: {at: [18,18,18], turns: [{about: x, degrees: 90}]}}
        - {id: rear, stock: ply, outline: [[0,0],[164,0],[164,100],[0,100]], place: {at: [18,200,18], turns: [{about: x, degrees: 90}]}}
      """;

  /** Masses of the steps add up to the station's (a step lifts what it places). */
  @Test
  void steps_liftTheWholeStation() {
    Station station = model("granary-loft");
    double all = station.parts().values().stream().mapToDouble(Part::mass).sum();
    double lifted =
        Assembly.plan(station, CONTACT).steps().stream().mapToDouble(BuildStep::mass).sum();
    assertEquals(all, lifted, 1e-9);
  }
}
