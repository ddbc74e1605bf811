package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Body;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;
import sawstead.station.Step;

/** What leaves only tipped, and what leaves only together. */
class TiltTest {
  private static final double WIDE = 200;
  private static final double HIGH = 400;

  private static Brief brief() {
    String text =
        """
        name: Tilt
        units: mm
        stock: [{name: ply, length: 2440, width: 1220, thickness: 18}]
        extras:
          - {id: any, stock: ply, outline: [[0,0],[9,0],[9,9],[0,9]], place: {at: [0,0,0]}}
        """;
    try {
      return BriefReader.read("tilt", text.getBytes(StandardCharsets.UTF_8));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static Part box(PartKind kind, String id, Vec size, Placement place) {
    Body body = new Body(id, Solids.box(size.x(), size.y(), size.z()), place);
    return new Part(kind, Optional.of("ply"), 1, body);
  }

  private static Part wall(String id, double... box) {
    return box(
        PartKind.PANEL,
        id,
        new Vec(box[3], box[4], box[5]),
        Placement.at(new Vec(box[0], box[1], box[2])));
  }

  private static Station station(Part... parts) {
    List<Step> first =
        java.util.Arrays.stream(parts).anyMatch(p -> p.id().equals("saw/body"))
            ? List.of(new Step(1, List.of("saw/body"), "put", new Vec(0, 0, -1), List.of()))
            : List.of();
    Map<String, Part> all = new TreeMap<>();
    for (Part part : parts) {
      all.put(part.id(), part);
    }
    return new Station(
        brief(),
        Optional.empty(),
        all,
        Map.of(),
        List.of(),
        List.of(),
        List.of(),
        first,
        Map.of(),
        List.of(),
        List.of());
  }

  /**
   * A vac in a room whose only doorway leans: two jambs parallel to each other, 15 degrees off the
   * upright, as far apart as the vac is wide plus some air on each side. Upright it would need
   * {@code W cos 15 + H sin 15} between them (the width of a turned rectangle, by hand).
   *
   * @param air on each side, mm
   */
  private static Station leaningDoorway(double air) {
    // Tipped about its lower left edge by 15 degrees about -y, its left side leans along the jamb.
    Placement lean = Placement.identity().turned(Vec.ZERO, new Vec(0, -1, 0), 15);
    Vec out = lean.turn(new Vec(1, 0, 0));
    return station(
        box(PartKind.ENVELOPE, "vac/body", new Vec(WIDE, 200, HIGH), Placement.at(Vec.ZERO)),
        box(
            PartKind.PANEL,
            "jamb/left",
            new Vec(400, 50, 900),
            lean.moved(out.scale(-400 - air).plus(new Vec(0, -100, 0)))
                .moved(lean.turn(new Vec(0, 0, -200)))),
        box(
            PartKind.PANEL,
            "jamb/right",
            new Vec(400, 50, 900),
            lean.moved(out.scale(WIDE + air).plus(new Vec(0, -100, 0)))
                .moved(lean.turn(new Vec(0, 0, -200)))),
        wall("room/left", -320, -300, 0, 18, 700, 700),
        wall("room/right", 500, -300, 0, 18, 700, 700),
        wall("room/rear", -320, 300, 0, 840, 18, 700),
        wall("room/roof", -320, -300, 700, 840, 700, 18));
  }

  private static Exit vac(Station station) {
    Stage stage = new Stage(station, 0.05);
    Blocking blocking = new Blocking(stage);
    Reach reach = new Reach(stage, Toolbox.of(station.brief().tools()));
    return new Exits(stage, blocking, reach)
        .all().stream().filter(e -> e.id().equals("vac/body")).findFirst().orElseThrow();
  }

  @Test
  void exit_throughALeaningDoorway_isTippedBy15Degrees() {
    Exit exit = vac(leaningDoorway(4));
    assertEquals(Exit.Verdict.TILTED, exit.verdict());
    assertEquals(15, exit.tilt());
    assertEquals(4, exit.least(), 0.01);
  }

  /**
   * Outside check: the way found is walked with the exact overlap, which the search does not use.
   */
  @Test
  void exit_throughALeaningDoorway_canBeWalked() {
    Station station = leaningDoorway(4);
    List<Vec> legs = vac(station).path();
    Body vac = station.part("vac/body").orElseThrow().body();
    Body tipped = vac.moved(Placement.identity().turned(Vec.ZERO, new Vec(0, -1, 0), 15));
    Vec at = Vec.ZERO;
    for (Vec leg : legs) {
      for (int i = 0; i <= 100; i++) {
        Body there = tipped.moved(Placement.at(at.plus(leg.scale(i / 100.0))));
        for (Part part : station.parts().values()) {
          if (!part.id().equals("vac/body")) {
            double depth = Overlap.between(there, part.body()).map(Overlap::depth).orElse(0.0);
            assertTrue(depth <= 0.05, part.id() + " at step " + i);
          }
        }
      }
      at = at.plus(leg);
    }
  }

  /** Half the contact tolerance may be used on each side: the verdict flips within 0.05 mm. */
  @ParameterizedTest
  @CsvSource({"0.03, true", "-0.02, true", "-0.05, false", "-0.5, false"})
  void exit_throughALeaningDoorway_flipsAtItsWidth(double air, boolean passes) {
    assertEquals(passes, vac(leaningDoorway(air)).verdict() == Exit.Verdict.TILTED);
  }

  /** Without a tilt nothing is proven there, since the jambs are no boxes: it must not say so. */
  @Test
  void exit_thatIsNeitherFoundNorExcluded_isUndecided() {
    assertEquals(Exit.Verdict.UNDECIDED, vac(leaningDoorway(-0.5)).verdict());
  }

  /**
   * A bracket that grips a block from above and below, both in a frame that is open at its top: up
   * the bracket is in the block's way and the block in the bracket's, so they leave together. The
   * saw beside them was there first, so the frame cannot be let down off them through the floor.
   */
  private static Station gripped(double openAbove) {
    return station(
        wall("bracket-hinge/above", 0, 0, 60, 100, 100, 20),
        wall("bracket-hinge/back", 80, 0, 20, 20, 100, 40),
        wall("bracket-hinge/below", 0, 0, 0, 100, 100, 20),
        wall("block", 0, 0, 20, 80, 100, 40),
        wall("frame-hinge/left", -20, 0, 0, 20, 100, 300),
        wall("frame-hinge/right", 100, 0, 0, 20, 100, 300),
        wall("frame-hinge/front", -20, -20, 0, 140, 20, 300),
        wall("frame-hinge/rear", -20, 100, 0, 140, 20, 300),
        wall("frame-hinge/floor", -20, -20, -20, 140, 140, 20),
        wall("frame-hinge/roof", -20, -20, 300, 140 - openAbove, 140, 20),
        wall("saw/body", 2000, 0, -20, 100, 100, 100));
  }

  /** By hand: of the three, up only the pair leaves, and sideways nothing does. */
  @Test
  void cluster_ofABracketRoundABlock_leavesUpTogether() {
    Stage stage = new Stage(gripped(139), 0.05);
    BitSet frame = new BitSet();
    frame.set(stage.of("frame-hinge/left"));
    BitSet things = stage.all();
    things.clear(stage.of("saw/body"));
    BitSet pair = (BitSet) things.clone();
    pair.andNot(frame);
    Blocking blocking = new Blocking(stage);
    assertEquals(List.of(pair), Clusters.thatLeaveTogether(blocking, new Vec(0, 0, 1), things));
    for (Vec aside : List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(-1, 0, 0))) {
      assertEquals(List.of(things), Clusters.thatLeaveTogether(blocking, aside, things));
    }
    for (int alone = pair.nextSetBit(0); alone >= 0; alone = pair.nextSetBit(alone + 1)) {
      BitSet one = new BitSet();
      one.set(alone);
      assertTrue(!blocking.isFree(one, new Vec(0, 0, 1), things), stage.thing(alone).name());
    }
  }

  /** The frame may come down over the pair, or the pair into the frame: one of them is found. */
  @Test
  void plan_ofABracketRoundABlock_findsAnOrder() {
    assertEquals(List.of(), Assembly.plan(gripped(139), 0.05).stuck());
  }

  /** With a roof over the frame there is no order, and all is boxes, so that is proven. */
  @Test
  void plan_ofABracketRoundABlockUnderARoof_isProvenToBeImpossible() {
    BuildPlan plan = Assembly.plan(gripped(0), 0.05);
    assertTrue(plan.stuck().size() >= 2, plan.stuck()::toString);
    assertTrue(plan.stuck().stream().allMatch(BuildPlan.Stuck::decided), plan.stuck()::toString);
  }
}
