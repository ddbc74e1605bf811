package sawstead.layout.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LowerBoundTest {
  private static final SheetKind TEN = new SheetKind(10, 10, SheetKind.ENDLESS, true, 0);

  private static int bound(List<SheetKind> sheets, PieceKind... pieces) {
    return LowerBound.of(new PackingProblem(sheets, List.of(pieces)));
  }

  @Test
  void bound_ofTinyProblems_isNeverAboveExhaustiveOptimum() {
    int met = 0;
    for (long seed = 1; seed <= 400; seed++) {
      PackingProblem problem = RandomProblems.tiny(seed, seed % 2 == 0);
      int exact = ExactPacking.sheets(problem);
      int bound = LowerBound.of(problem);
      assertTrue(bound <= exact, "seed " + seed + ": bound " + bound + " above " + exact);
      met += bound == exact ? 1 : 0;
    }
    assertTrue(met > 300, "the bound meets the optimum only " + met + " times of 400");
  }

  @Test
  void bound_ofPiecesOverHalfInBothWays_isTheirNumber() {
    // Two 6 x 6 never share a 10 x 10: area says 3, no two together says 7.
    assertEquals(7, bound(List.of(TEN), new PieceKind(6, 6, false, 7)));
  }

  @Test
  void bound_ofFourQuartersASheet_isAQuarterOfTheirNumber() {
    assertEquals(3, bound(List.of(TEN), new PieceKind(5, 5, false, 12)));
    assertEquals(4, bound(List.of(TEN), new PieceKind(5, 5, false, 13)));
  }

  @Test
  void bound_ofPiecesJustOverAThird_countsFourASheet() {
    // 4 x 4 in 10 x 10: at most two each way, so four a sheet, though six would fit by area.
    assertEquals(3, bound(List.of(TEN), new PieceKind(4, 4, false, 9)));
  }

  @Test
  void bound_withOffcutThatHoldsAll_isZero() {
    SheetKind offcut = new SheetKind(8, 8, 1, false, 0);
    assertEquals(0, bound(List.of(TEN, offcut), new PieceKind(4, 4, false, 4)));
    assertEquals(1, bound(List.of(TEN, offcut), new PieceKind(4, 4, false, 5)));
  }

  @Test
  void bound_withMixedTurning_doesNotUseTheMeanForFixedPiecesAlone() {
    // A fixed and a free piece of 2 x 10 each lie side by side on 4 x 10.
    PackingProblem problem =
        new PackingProblem(
            List.of(new SheetKind(10, 10, SheetKind.ENDLESS, true, 0)),
            List.of(new PieceKind(10, 5, false, 1), new PieceKind(5, 10, true, 1)));
    assertEquals(1, LowerBound.of(problem));
    assertEquals(1, ExactPacking.sheets(problem));
  }
}
