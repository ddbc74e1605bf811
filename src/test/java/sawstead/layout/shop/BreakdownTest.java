package sawstead.layout.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sawstead.joinery.Board;
import sawstead.layout.Complaint;
import sawstead.layout.CutRequestException;
import sawstead.layout.Offcut;
import sawstead.layout.PlacedPiece;
import sawstead.layout.PlanCheck;
import sawstead.layout.SheetPlan;
import sawstead.layout.SimulatedOperator;
import sawstead.station.Briefs;
import sawstead.station.RandomBrief;

/** Plans of whole stations, judged by what was written apart from the planner. */
class BreakdownTest {
  private static final int RANDOM_STATIONS = 10;

  /** Two boards of one's own and their sheet. */
  static final String TWO =
      """
      name: Two
      units: mm
      stock:
        - {name: ply, length: 2440, width: 1220, thickness: 18, price: 80}
      extras:
        - {id: a, stock: ply, outline: [[0,0],[600,0],[600,300],[0,300]], place: {at: [0,0,0]}}
        - {id: b, stock: ply, outline: [[0,0],[600,0],[600,300],[0,300]], place: {at: [0,0,99]}}
      """;

  @TestFactory
  Stream<DynamicTest> demos_canBeCut() {
    return Briefs.demos().stream()
        .map(file -> dynamicTest(file.toString(), () -> canBeCut(Breakdowns.demo(file))));
  }

  @TestFactory
  Stream<DynamicTest> madeUpStations_canBeCut() {
    return LongStream.range(700, 700 + RANDOM_STATIONS)
        .mapToObj(
            seed ->
                dynamicTest("seed " + seed, () -> canBeCut(Breakdowns.of(RandomBrief.of(seed)))));
  }

  /** No forbidden cut, every finished size within 0.1 mm, every panel of the station once. */
  private static void canBeCut(Breakdown breakdown) {
    assertEquals(List.of(), PlanCheck.faults(breakdown.request(), breakdown.plan()));
    assertEquals(List.of(), SimulatedOperator.refusals(breakdown.request(), breakdown.plan()));
    assertTrue(breakdown.plan().newSheets() >= breakdown.plan().lowerBound());
    Map<String, PlacedPiece> pieces = new HashMap<>();
    for (SheetPlan sheet : breakdown.plan().sheets()) {
      for (PlacedPiece piece : sheet.pieces()) {
        assertEquals(null, pieces.put(piece.part(), piece), piece.part() + " is cut twice");
        assertFalse(piece.turned(), piece.part() + " lies across the grain");
      }
    }
    assertEquals(breakdown.station().boards().keySet(), pieces.keySet());
    for (Board board : breakdown.station().boards().values()) {
      PlacedPiece piece = pieces.get(board.id());
      assertEquals(board.outline().bounds().size().x(), piece.length(), 0.1, board.id());
      assertEquals(board.outline().bounds().size().y(), piece.width(), 0.1, board.id());
    }
  }

  @Test
  void offcuts_areUsedBeforeANewSheet() throws CutRequestException {
    Breakdown breakdown =
        Breakdowns.of(
            TWO.replace(
                "price: 80", "price: 80, offcuts: [{name: rack, length: 620, width: 610}]"));
    assertEquals("rack", breakdown.plan().sheets().get(0).stock());
    assertEquals(0, breakdown.plan().newSheets());
    assertEquals(0, breakdown.plan().cost());
  }

  @Test
  void quantity_isKept_andOffcutsTakeTheRest() throws CutRequestException {
    // The first board fills a sheet, of which there is one.
    Breakdown breakdown =
        Breakdowns.of(
            TWO.replace(
                    "{id: a, stock: ply, outline: [[0,0],[600,0],[600,300],[0,300]]",
                    "{id: a, stock: ply, outline: [[0,0],[2400,0],[2400,1200],[0,1200]]")
                .replace(
                    "price: 80",
                    "price: 80, quantity: 1, offcuts: [{name: rack, length: 620, width: 310}]"));
    assertEquals(
        List.of("rack", "ply"),
        breakdown.plan().sheets().stream()
            .map(SheetPlan::stock)
            .sorted((x, y) -> -x.compareTo(y))
            .toList());
    assertEquals(1, breakdown.plan().newSheets());
    assertEquals(80, breakdown.plan().cost());
  }

  @Test
  void grainAcrossTheSheet_laysPanelsAcrossIt() throws CutRequestException {
    Breakdown breakdown = Breakdowns.of(TWO.replace("price: 80", "grain: width"));
    SheetPlan sheet = breakdown.plan().sheets().get(0);
    assertEquals(1220, sheet.length());
    assertEquals(2440, sheet.width());
  }

  @Test
  void panelLargerThanAnySheet_isNamedWithARemedy() {
    Complaint complaint = complaint(TWO.replace("[600,0],[600,300]", "[2500,0],[2500,300]"));
    assertEquals("too-large", complaint.code());
    assertTrue(complaint.what().contains("'a'"), complaint.what());
    assertTrue(complaint.remedy().contains("larger sheet"), complaint.remedy());
  }

  @Test
  void noSheetLeft_isSaidWithThePart() {
    Complaint complaint = complaint(TWO.replace("price: 80", "quantity: 0"));
    assertEquals("no-stock", complaint.code());
    assertTrue(complaint.what().contains("'ply'"), complaint.what());
    assertTrue(complaint.what().contains("'a'"), complaint.what());
  }

  @Test
  void kerfWiderThanAPanel_isSaidWithThePart() {
    Complaint complaint =
        complaint(
            TWO.replace("[600,0],[600,300],[0,300]", "[600,0],[600,4],[0,4]")
                + "cutting: {tableKerf: 4}\n");
    assertEquals("kerf-wider", complaint.code());
    assertTrue(complaint.what().contains("'a'"), complaint.what());
  }

  private static Complaint complaint(String text) {
    CutRequestException e = assertThrows(CutRequestException.class, () -> Breakdowns.of(text));
    return e.complaints().get(0);
  }

  @TestFactory
  Stream<DynamicTest> steps_nameEveryPieceOnce_andLoseOnlyDust() {
    return Briefs.demos().stream()
        .map(file -> dynamicTest(file.toString(), () -> steps(Breakdowns.demo(file))));
  }

  private static void steps(Breakdown breakdown) {
    List<String> parts = new ArrayList<>();
    List<String> works = new ArrayList<>();
    int rests = 0;
    for (ShopStep step : breakdown.steps()) {
      for (CutPiece piece : List.of(step.near(), step.far())) {
        if (piece.kind() == CutPiece.Kind.PART) {
          parts.add(piece.name());
        } else if (piece.kind() == CutPiece.Kind.WORK) {
          works.add(piece.name());
        } else if (piece.kind() == CutPiece.Kind.OFFCUT) {
          rests++;
        }
      }
      double dust = area(step.work()) - area(step.near()) - area(step.far());
      double most = step.kerf() * (step.cut().to() - step.cut().from());
      assertTrue(dust > 0 && dust <= most + 1e-3, "cut " + step.cut().order() + ": " + dust);
    }
    assertEquals(works.size(), works.stream().distinct().count());
    assertEquals(
        breakdown.station().boards().keySet().stream().sorted().toList(),
        parts.stream().sorted().toList());
    assertEquals(breakdown.plan().offcuts().stream().mapToInt((Offcut o) -> 1).sum(), rests);
    // Every piece that is cut again is cut again exactly once.
    List<String> cut =
        breakdown.steps().stream()
            .map(step -> step.work().name())
            .filter(name -> !name.startsWith("sheet"))
            .sorted()
            .toList();
    assertEquals(works.stream().sorted().toList(), cut);
  }

  private static double area(CutPiece piece) {
    return piece.length() * piece.width();
  }
}
