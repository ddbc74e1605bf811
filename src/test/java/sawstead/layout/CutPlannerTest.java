package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sawstead.layout.packing.Watch;

class CutPlannerTest {
  private static final Effort SHORT = new Effort(0.05, 3, 2);
  private static final Board BIRCH = new Board("birch-18", 18, 685);
  private static final Stock FULL = Stock.sheet("full", "birch-18", 2440, 1220, 5);

  private static Part part(String name, double length, double width, int quantity, Grain grain) {
    return new Part(name, length, width, quantity, grain, "birch-18", "list.csv:2");
  }

  private static CutRequest request(double kerf, List<Stock> stock, Part... parts) {
    return new CutRequest(
        List.of(BIRCH), List.of(parts), stock, Kerfs.both(kerf), SawLimits.SMALL_SAW);
  }

  private static CutPlan plan(CutRequest request) throws CutRequestException {
    CutPlan plan = CutPlanner.plan(request, SHORT, Watch.NONE);
    assertEquals(List.of(), PlanCheck.faults(request, plan));
    return plan;
  }

  private static void assertComplaint(CutRequest request, String code, String... words) {
    CutRequestException e = assertThrows(CutRequestException.class, () -> plan(request));
    Complaint complaint =
        e.complaints().stream()
            .filter(c -> c.code().equals(code))
            .findFirst()
            .orElseThrow(() -> new AssertionError(e.complaints().toString()));
    for (String word : words) {
      assertTrue((complaint.what() + complaint.remedy()).contains(word), complaint.toString());
    }
    assertTrue(!complaint.where().isBlank() && !complaint.remedy().isBlank());
  }

  @Test
  void plan_twiceWithOneSeed_isTheSame() throws Exception {
    CutRequest request = RandomRequests.project(11);
    assertEquals(plan(request), plan(request));
  }

  @Test
  void plan_withExactFit_needsNoMoreThanOneSheet() throws Exception {
    // Two rows of 1205 - 1.6 each side of one kerf: (1220 - 10 - 3.2) / 2 = 603.4.
    CutRequest fits = request(3.2, List.of(FULL), part("half", 2430, 603.4, 2, Grain.ALONG));
    assertEquals(1, plan(fits).newSheets());
    CutRequest misses = request(3.2, List.of(FULL), part("half", 2430, 603.401, 2, Grain.ALONG));
    assertEquals(2, plan(misses).newSheets());
  }

  @Test
  void plan_withGrainAcross_turnsThePart() throws Exception {
    CutPlan plan = plan(request(3.2, List.of(FULL), part("a", 1000, 300, 2, Grain.ACROSS)));
    for (PlacedPiece piece : plan.sheets().get(0).pieces()) {
      assertTrue(piece.turned());
      assertEquals(300, piece.length());
      assertEquals(1000, piece.width());
    }
  }

  @Test
  void plan_withOffcut_cutsItFirst() throws Exception {
    Stock offcut = new Stock("rack-3", "birch-18", 800, 600, 1, 0, 0, true, "rack");
    CutPlan plan = plan(request(3.2, List.of(FULL, offcut), part("a", 390, 590, 2, Grain.ALONG)));
    assertEquals(0, plan.newSheets());
    assertEquals("rack-3", plan.sheets().get(0).stock());
    assertEquals(0, plan.lowerBound());
  }

  @Test
  void plan_withDefects_avoidsThem() throws Exception {
    // A dent of 100 x 100 at the far end, a split along the lower edge: 2300 x 1150 are sound.
    List<Defect> defects = List.of(new Defect(2300, 600, 100, 100), new Defect(300, 0, 900, 70));
    Stock dented = new Stock("dented", "birch-18", 2440, 1220, 1, 0, 5, true, "rack", defects);
    CutRequest fits = request(3.2, List.of(FULL, dented), part("a", 2290, 570, 2, Grain.ALONG));
    CutPlan plan = plan(fits);
    assertEquals(0, plan.newSheets());
    assertEquals(List.of(), SimulatedOperator.refusals(fits, plan));
    CutRequest misses = request(3.2, List.of(FULL, dented), part("a", 2296, 580, 2, Grain.ALONG));
    assertEquals(1, plan(misses).newSheets());
  }

  @Test
  void plan_withAPieceOnADefect_isFaulty() throws Exception {
    CutRequest sound = request(3.2, List.of(FULL), part("a", 500, 300, 1, Grain.ALONG));
    CutPlan plan = plan(sound);
    Stock dented =
        new Stock(
            "full",
            "birch-18",
            2440,
            1220,
            1,
            0,
            5,
            false,
            "rack",
            List.of(new Defect(100, 100, 10, 10)));
    CutRequest now =
        new CutRequest(
            sound.boards(), sound.parts(), List.of(dented), sound.kerfs(), sound.limits());
    assertEquals(List.of("a has a defect of sheet 1"), PlanCheck.faults(now, plan));
  }

  @Test
  void plan_ofTwoBoards_keepsThemApart() throws Exception {
    CutRequest request =
        new CutRequest(
            List.of(BIRCH, new Board("birch-12", 12, 695)),
            List.of(
                part("a", 700, 500, 1, Grain.FREE),
                new Part("b", 700, 500, 1, Grain.FREE, "birch-12", "list.csv:3")),
            List.of(FULL, Stock.sheet("thin", "birch-12", 2440, 1220, 5)),
            Kerfs.both(3.2),
            SawLimits.SMALL_SAW);
    CutPlan plan = plan(request);
    assertEquals(2, plan.newSheets());
    assertEquals(2, plan.lowerBound());
  }

  @Test
  void plan_ofEqualWidthsFromTwoSheets_sharesOneSetting() throws Exception {
    // Ten strips of 230 x 1150 do not fit one sheet; all are ripped to 230.
    CutPlan plan = plan(request(3.2, List.of(FULL), part("strip", 1150, 230, 12, Grain.ALONG)));
    assertEquals(2, plan.newSheets());
    long at230 =
        plan.sheets().stream()
            .flatMap(s -> s.cuts().stream())
            .filter(c -> c.guide() == Guide.FENCE)
            .map(c -> c.setting().getAsDouble())
            .distinct()
            .count();
    assertEquals(1, at230);
  }

  @Test
  void plan_thinnerTableBlade_stillFreesExactSizes() throws Exception {
    CutRequest request =
        new CutRequest(
            List.of(BIRCH),
            List.of(part("a", 600, 300, 7, Grain.ALONG), part("b", 333, 77, 9, Grain.FREE)),
            List.of(FULL),
            new Kerfs(1.6, 3.2),
            SawLimits.SMALL_SAW);
    assertEquals(List.of(), SimulatedOperator.refusals(request, plan(request)));
  }

  @Test
  void plan_largestOffcut_isListedFirst() throws Exception {
    CutPlan plan = plan(request(3.2, List.of(FULL), part("a", 500, 300, 3, Grain.FREE)));
    assertTrue(plan.offcuts().get(0).area() > 1_900_000, plan.offcuts().toString());
  }

  @Test
  void plan_favouringLabour_neverTakesMoreOfItThanTheOther() throws Exception {
    for (long seed = 1; seed <= 12; seed++) {
      CutRequest request = RandomRequests.project(seed);
      CutPlan waste = CutPlanner.plan(request, SHORT, Watch.NONE);
      CutPlan labour = CutPlanner.plan(request, SHORT.favouring(Favour.LABOUR), Watch.NONE);
      Choice first = labour.choices().get(0);
      assertEquals(Favour.LABOUR, first.favour());
      assertEquals(first, waste.choices().get(1), "seed " + seed);
      assertEquals(labour.settings(), first.settings());
      assertEquals(waste.newSheets(), labour.newSheets(), "seed " + seed);
    }
  }

  @Test
  void plan_ofMatchedParts_givesThemTheirSizeAtOneSetting() throws Exception {
    // Strips as long as the sheet, too long for the table saw before they are cut
    // through: along the rail each would be marked by itself.
    CutRequest request = request(3.2, List.of(FULL), part("leg", 780, 100, 20, Grain.ALONG));
    CutPlan plan = CutPlanner.plan(request, SHORT.favouring(Favour.LABOUR), Watch.NONE);
    // Two sizes, two places of fence and stop; it may go back to one of them.
    assertEquals(
        Set.of(100.0, 780.0),
        plan.sheets().stream()
            .flatMap(sheet -> sheet.cuts().stream())
            .flatMap(cut -> cut.setting().stream().boxed())
            .collect(Collectors.toSet()),
        CutPlanText.of(plan));
    long exact =
        plan.sheets().stream()
            .flatMap(sheet -> sheet.pieces().stream())
            .filter(
                piece ->
                    plan.sheets().get(0).cuts().stream()
                        .anyMatch(
                            cut ->
                                cut.along() == Direction.LENGTH
                                    && cut.setting().isEmpty()
                                    && cut.from() < piece.x() + piece.length()
                                    && cut.to() > piece.x()
                                    && Math.abs(cut.at() - piece.y() - piece.width()) < 0.1))
            .count();
    assertEquals(0, exact, CutPlanText.of(plan));
  }

  @Test
  void partLargerThanAnySheet_isNamed() {
    assertComplaint(
        request(3.2, List.of(FULL), part("top", 2431, 600, 1, Grain.FREE)),
        "too-large",
        "'top'",
        "2430");
  }

  @Test
  void grainThatCannotBe_isNamedWithTheWayOut() {
    assertComplaint(
        request(3.2, List.of(FULL), part("door", 1900, 600, 1, Grain.ACROSS)),
        "grain",
        "'door'",
        "along or free");
  }

  @Test
  void kerfWiderThanAPart_isNamed() {
    assertComplaint(
        request(3.2, List.of(FULL), part("sliver", 500, 3, 1, Grain.FREE)),
        "kerf-wider",
        "'sliver'");
  }

  @Test
  void offcutListedTwice_isNamed() {
    Stock offcut = new Stock("rack-3", "birch-18", 800, 600, 1, 0, 0, true, "rack");
    assertComplaint(
        request(3.2, List.of(FULL, offcut, offcut), part("a", 100, 100, 1, Grain.FREE)),
        "offcut-twice",
        "'rack-3'");
  }

  @Test
  void noStockOfTheBoard_isNamed() {
    Stock other = Stock.sheet("full", "oak", 2440, 1220, 5);
    CutRequest request =
        new CutRequest(
            List.of(BIRCH, new Board("oak", 20, 700)),
            List.of(part("a", 100, 100, 1, Grain.FREE)),
            List.of(other),
            Kerfs.both(3),
            SawLimits.SMALL_SAW);
    assertComplaint(request, "no-stock", "'birch-18'", "'a'");
  }

  @Test
  void stockThatIsNotEnough_isSaid() {
    Stock one = new Stock("one", "birch-18", 700, 700, 1, 0, 0, false, "rack");
    assertComplaint(request(3.2, List.of(one), part("a", 600, 600, 2, Grain.FREE)), "not-enough");
    assertComplaint(request(3.2, List.of(one), part("a", 400, 400, 2, Grain.FREE)), "not-enough");
  }

  @Test
  void impossibleFigures_areAllReportedAtOnce() {
    List<Stock> stock = new ArrayList<>(List.of(Stock.sheet("s", "birch-18", 2440, 1220, 700)));
    CutRequest request =
        request(
            Double.NaN,
            stock,
            part("a", -1, 100, 1, Grain.FREE),
            part("b", 100, Double.NaN, 1, Grain.FREE),
            part("c", 100, 100, 0, Grain.FREE));
    assertComplaint(request, "kerf");
    assertComplaint(request, "trim");
    CutRequestException e = assertThrows(CutRequestException.class, () -> plan(request));
    assertEquals(5, e.complaints().size(), e.complaints().toString());
  }

  @Test
  void emptyList_isSaid() {
    assertComplaint(request(3.2, List.of(FULL)), "no-parts");
  }
}
