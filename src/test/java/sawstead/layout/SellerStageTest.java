package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.layout.packing.Watch;
import sawstead.layout.shop.ShopStep;

class SellerStageTest {
  private static final Effort SHORT = new Effort(0.02, 1, 1);
  private static final int PROJECTS = 60;
  private static final double KERF = 4;

  private static CutRequest carried(CutRequest request, Carry carry) {
    Kerfs own = request.kerfs();
    return new CutRequest(
        request.boards(),
        request.parts(),
        request.stock(),
        new Kerfs(own.guided(), own.table(), KERF),
        request.limits(),
        Optional.of(carry));
  }

  private static int sellers(CutPlan plan) {
    return (int)
        plan.sheets().stream()
            .flatMap(s -> s.cuts().stream())
            .filter(cut -> cut.guide() == Guide.SELLER)
            .count();
  }

  @Test
  void randomProjects_areCarriedHomeAndCut() throws Exception {
    Carry carry = new Carry(1500, 1250, 23, 4);
    int cut = 0;
    int told = 0;
    for (long seed = 1; seed <= PROJECTS; seed++) {
      CutRequest whole = RandomRequests.project(seed);
      CutRequest request = carried(whole, carry);
      CutPlan plan = CutPlanner.plan(request, SHORT, Watch.NONE);
      assertEquals(List.of(), PlanCheck.faults(request, plan), "seed " + seed);
      List<String> refusals = SimulatedOperator.refusals(request, plan);
      boolean tooLong = whole.parts().stream().anyMatch(p -> p.length() > 1492);
      boolean says = plan.cautions().toString().contains("carry");
      // Whoever is not told that a piece is too large finds none that is; and the other way round.
      assertEquals(says, refusals.toString().contains("nobody carries"), "seed " + seed + refusals);
      refusals.forEach(r -> assertTrue(r.contains("nobody carries"), r));
      if (!tooLong && says) {
        told++;
      }
      assertEquals(
          plan.sheets().stream().mapToInt(s -> s.cuts().size()).sum(),
          ShopStep.of(request, plan).size(),
          "seed " + seed);
      cut += sellers(plan);
    }
    assertTrue(cut > PROJECTS, "only " + cut + " cuts at the seller's");
    // Fewest sheets come first: where they are full, the seller's kerf finds no room.
    assertTrue(told <= PROJECTS / 8, told + " projects with a piece that is not carried");
  }

  /**
   * REF-PLY-10, 685 kg/m3. Four columns of 500 mm on 2040: cut in the middle, the pieces are 1011
   * (two columns, a kerf, 2 x 4 mm) and 1025 mm long, and the heavier weighs 0.685 x 18 x 1.22 x
   * 1.025 = 15.418 kg.
   */
  @Test
  void halfASheet_atTheLimitOfMass_flipsTheNumberOfCuts() throws Exception {
    CutRequest whole =
        new CutRequest(
            List.of(new Board("board", 18, 685)),
            List.of(new Part("p", 500, 500, 8, Grain.ALONG, "board", "p")),
            List.of(Stock.sheet("sheet", "board", 2040, 1220, 0)),
            Kerfs.both(3),
            SawLimits.SMALL_SAW);
    CutRequest strong = carried(whole, new Carry(1430, 1250, 15.48, 4));
    CutRequest weak = carried(whole, new Carry(1430, 1250, 15.3, 4));
    CutPlan two = CutPlanner.plan(strong, SHORT, Watch.NONE);
    CutPlan more = CutPlanner.plan(weak, SHORT, Watch.NONE);
    assertEquals(List.of(), SimulatedOperator.refusals(strong, two));
    assertEquals(List.of(), SimulatedOperator.refusals(weak, more));
    assertEquals(1, sellers(two));
    assertTrue(sellers(more) > 1);
  }

  @Test
  void smallSheet_goesHomeWhole() throws Exception {
    CutRequest request = carried(RandomRequests.project(3), new Carry(2440, 1220, 60, 4));
    assertEquals(0, sellers(CutPlanner.plan(request, SHORT, Watch.NONE)));
  }
}
