package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sawstead.layout.packing.Watch;

class SimulatedOperatorTest {
  private static final Effort SHORT = new Effort(0.02, 1, 1);

  private static final int PROJECTS = Boolean.getBoolean("sawstead.long") ? 3000 : 120;

  @Test
  void replay_ofRandomProjects_isWithoutForbiddenCuts() throws Exception {
    int table = 0;
    for (long seed = 1; seed <= PROJECTS; seed++) {
      CutRequest request = RandomRequests.project(seed);
      CutPlan plan = CutPlanner.plan(request, SHORT, Watch.NONE);
      assertEquals(List.of(), PlanCheck.faults(request, plan), "seed " + seed);
      assertEquals(List.of(), SimulatedOperator.refusals(request, plan), "seed " + seed);
      assertEquals(List.of(), plan.cautions(), "seed " + seed);
      table += count(plan, Guide.FENCE);
    }
    // Cutting everything along the rail would pass all of the above.
    assertTrue(table > 5 * PROJECTS, "only " + table + " cuts at the fence");
  }

  private static int count(CutPlan plan, Guide guide) {
    return (int)
        plan.sheets().stream()
            .flatMap(s -> s.cuts().stream())
            .filter(cut -> cut.guide() == guide)
            .count();
  }

  /** One sheet of 600 x 400 with one cut, and what comes off it. */
  private static List<String> refusals(SawLimits limits, Cut cut, PlacedPiece... pieces) {
    CutRequest request =
        new CutRequest(
            List.of(new Board("board", 18, 685)),
            List.of(),
            List.of(Stock.sheet("sheet", "board", 600, 400, 0)),
            Kerfs.both(3),
            limits);
    SheetPlan sheet = new SheetPlan("sheet", 600, 400, List.of(pieces), List.of(cut));
    return SimulatedOperator.refusals(
        request, new CutPlan(0, 1, 0, List.of(sheet), 1, List.of(), List.of(), List.of(), false));
  }

  private static Cut cut(Guide guide, Direction along, double at, double setting) {
    double to = along == Direction.LENGTH ? 600 : 400;
    OptionalDouble distance =
        guide.tool() == Tool.TABLE ? OptionalDouble.of(setting) : OptionalDouble.empty();
    return new Cut(1, guide, along, at, 0, to, distance);
  }

  private static void assertRefused(List<String> refusals, String why) {
    assertEquals(1, refusals.size(), refusals.toString());
    assertTrue(refusals.get(0).contains(why), refusals.toString());
  }

  @Test
  void rip_byTheLongEdge_isMade() {
    PlacedPiece strip = new PlacedPiece("strip", 0, 0, 600, 100, false);
    Cut cut = cut(Guide.FENCE, Direction.LENGTH, 100, 100);
    assertEquals(List.of(), refusals(SawLimits.SMALL_SAW, cut, strip));
  }

  @Test
  void rip_withTheFenceSetWrong_comesOutWrong() {
    PlacedPiece strip = new PlacedPiece("strip", 0, 0, 600, 100, false);
    Cut cut = cut(Guide.FENCE, Direction.LENGTH, 100, 99);
    assertTrue(refusals(SawLimits.SMALL_SAW, cut, strip).toString().contains("did not come off"));
  }

  @Test
  void crosscut_alongTheFence_isRefused() {
    Cut cut = cut(Guide.FENCE, Direction.WIDTH, 300, 300);
    assertRefused(refusals(SawLimits.SMALL_SAW, cut), "wider");
  }

  @Test
  void rip_ofAStripNarrowerThanSafe_isRefused() {
    Cut cut = cut(Guide.FENCE, Direction.LENGTH, 15, 15);
    assertRefused(refusals(SawLimits.SMALL_SAW, cut), "between fence and blade");
  }

  @Test
  void rip_beyondTheFence_isRefused() {
    Cut cut = cut(Guide.FENCE, Direction.LENGTH, 300, 300);
    assertRefused(refusals(SawLimits.SMALL_SAW.withRipCapacity(250), cut), "does not go out");
  }

  @Test
  void anyCut_ofAPieceTooHeavyForTheTable_isRefused() {
    // 600 x 400 x 18 mm at 685 kg per cubic metre: 2.96 kg.
    SawLimits weak =
        new SawLimits(1200, 600, 2.9, 610, 600, 300, 19, 100, 100, 30, 900, 1500, 1500);
    assertRefused(refusals(weak, cut(Guide.SLED, Direction.WIDTH, 300, 300)), "too heavy");
    SawLimits strong =
        new SawLimits(1200, 600, 3.0, 610, 600, 300, 19, 100, 100, 30, 900, 1500, 1500);
    assertEquals(List.of(), refusals(strong, cut(Guide.SLED, Direction.WIDTH, 300, 300)));
  }

  @Test
  void rip_withoutRoomBehindTheSaw_isRefused() {
    SawLimits room = new SawLimits(1200, 600, 12, 610, 600, 300, 19, 100, 100, 30, 900, 600, 599);
    assertRefused(refusals(room, cut(Guide.FENCE, Direction.LENGTH, 100, 100)), "behind the saw");
  }

  @Test
  void stop_farther_thanTheSledReaches_isRefused() {
    SawLimits near = new SawLimits(1200, 600, 12, 610, 600, 300, 19, 100, 100, 30, 299, 1500, 1500);
    assertRefused(refusals(near, cut(Guide.SLED, Direction.WIDTH, 300, 300)), "does not go out");
  }

  @Test
  void railCut_withNothingToRestOn_isRefused() {
    SawLimits wide = new SawLimits(1200, 600, 12, 610, 600, 300, 19, 100, 350, 30, 900, 1500, 1500);
    assertRefused(refusals(wide, cut(Guide.RAIL, Direction.LENGTH, 200, 0)), "to rest on");
    assertEquals(List.of(), refusals(wide, cut(Guide.PACKED_RAIL, Direction.LENGTH, 200, 0)));
  }

  @Test
  void cut_thatDoesNotRunFromEdgeToEdge_findsNoPiece() {
    Cut cut = new Cut(1, Guide.RAIL, Direction.LENGTH, 100, 0, 500, OptionalDouble.empty());
    assertRefused(refusals(SawLimits.SMALL_SAW, cut), "no such piece");
  }
}
