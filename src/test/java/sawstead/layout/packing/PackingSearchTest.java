package sawstead.layout.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PackingSearchTest {
  /** Rows and pieces, as a stand-in for cuts. */
  private static final Labour FEWEST =
      sheets -> sheets.stream().mapToLong(sheet -> tiles(sheet.tile())).sum();

  private static long tiles(Tile tile) {
    return tile instanceof Tile.Row row
        ? 1 + row.parts().stream().mapToLong(PackingSearchTest::tiles).sum()
        : 1;
  }

  private static Packing search(PackingProblem problem, Budget budget) {
    return PackingSearch.search(problem, FEWEST, budget, LowerBound.of(problem), Watch.NONE)
        .orElseThrow()
        .leftoverFirst();
  }

  private static PackingProblem middling(long seed, List<SheetKind> sheets) {
    SplittableRandom random = new SplittableRandom(seed);
    List<PieceKind> pieces = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      int l = 10 + random.nextInt(70);
      int w = 10 + random.nextInt(40);
      pieces.add(new PieceKind(l, w, random.nextBoolean() && l != w, 1 + random.nextInt(3)));
    }
    return new PackingProblem(sheets, pieces);
  }

  private static final SheetKind SHEET = new SheetKind(122, 61, SheetKind.ENDLESS, true, 40);

  @Test
  void search_ofTinyProblems_findsTheExhaustiveOptimum() {
    for (long seed = 1; seed <= 60; seed++) {
      PackingProblem problem = RandomProblems.tiny(seed, seed % 3 == 0);
      Packing packing = search(problem, new Budget(0.01, seed, 1));
      assertEquals(ExactPacking.sheets(problem), packing.counted(), "seed " + seed);
    }
  }

  @Test
  void search_twiceWithOneSeed_givesTheSamePacking() {
    PackingProblem problem = middling(7, List.of(SHEET));
    Budget budget = new Budget(0.1, 5, 2);
    assertEquals(search(problem, budget), search(problem, budget));
  }

  @Test
  void search_endedAtOnce_stillPlacesEverything() {
    PackingProblem problem = middling(8, List.of(SHEET));
    Packing packing =
        PackingSearch.search(
                problem,
                FEWEST,
                new Budget(1, 1, 2),
                LowerBound.of(problem),
                (done, n, bound) -> false)
            .orElseThrow()
            .leftoverFirst();
    assertTrue(packing.interrupted());
    assertEquals(
        problem.pieces().stream().mapToInt(PieceKind::demand).sum(),
        packing.sheets().stream().mapToInt(sheet -> count(sheet.tile())).sum());
  }

  private static int count(Tile tile) {
    if (tile instanceof Tile.Row row) {
      return row.parts().stream().mapToInt(PackingSearchTest::count).sum();
    }
    return 1;
  }

  @Test
  void search_withOffcuts_usesThemBeforeNewSheets() {
    SheetKind offcut = new SheetKind(50, 50, 2, false, 0);
    PackingProblem problem =
        new PackingProblem(List.of(SHEET, offcut), List.of(new PieceKind(50, 25, false, 4)));
    assertEquals(0, search(problem, new Budget(0.02, 1, 2)).counted());
  }

  @Test
  void search_withTwoPrices_takesTheCheaperSheetWhenItServes() {
    SheetKind dear = new SheetKind(122, 61, SheetKind.ENDLESS, true, 90);
    SheetKind cheap = new SheetKind(61, 61, SheetKind.ENDLESS, true, 30);
    PackingProblem problem =
        new PackingProblem(List.of(dear, cheap), List.of(new PieceKind(60, 30, false, 2)));
    Packing packing = search(problem, new Budget(0.05, 1, 2));
    assertEquals(1, packing.counted());
    assertEquals(30, packing.price());
  }

  @Test
  void search_withoutEnoughStock_isEmpty() {
    SheetKind one = new SheetKind(10, 10, 1, true, 0);
    PackingProblem problem =
        new PackingProblem(List.of(one), List.of(new PieceKind(6, 6, false, 2)));
    assertFalse(
        PackingSearch.search(problem, FEWEST, new Budget(0.02, 1, 1), 0, Watch.NONE).isPresent());
  }

  @Test
  void search_whenSheetsAreProven_leavesOneLargePieceOver() {
    // Six 20 x 30 fill half of 120 x 60 and can be packed so that 60 x 60 stays whole.
    SheetKind sheet = new SheetKind(120, 60, SheetKind.ENDLESS, true, 0);
    PackingProblem problem =
        new PackingProblem(List.of(sheet), List.of(new PieceKind(20, 30, true, 6)));
    Packing packing = search(problem, new Budget(0.1, 1, 2));
    assertEquals(1, packing.counted());
    assertEquals(3600, largest(packing.sheets().get(0).tile()));
  }

  private static long largest(Tile tile) {
    long largest = 0;
    if (tile instanceof Tile.Row row) {
      largest = (long) row.slack() * (row.alongLength() ? row.width() : row.length());
      for (Tile part : row.parts()) {
        largest = Math.max(largest, largest(part));
      }
    }
    return largest;
  }
}
