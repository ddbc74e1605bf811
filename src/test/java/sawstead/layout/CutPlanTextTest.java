package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CutPlanTextTest {
  @Test
  void text_ofASmallPlan_isWhatTheShopReads() {
    SheetPlan sheet =
        new SheetPlan(
            "full",
            1000,
            500,
            List.of(new PlacedPiece("side", 0, 0, 600, 250.5, false)),
            List.of(
                new Cut(1, Guide.RAIL, Direction.WIDTH, 600, 0, 500, OptionalDouble.empty()),
                new Cut(
                    2, Guide.FENCE, Direction.LENGTH, 250.5, 0, 600, OptionalDouble.of(250.5))));
    CutPlan plan =
        new CutPlan(
            0,
            1,
            0,
            List.of(sheet),
            1,
            List.of(new Offcut("full", 1, 603, 0, 397, 500)),
            List.of("hold it well"),
            List.of(new Choice(Favour.LEFTOVER, 1, Optional.empty(), 1, 1, 2)),
            false);
    assertEquals(
        """
        1 sheet (proven: no plan needs fewer than 0); 2 cuts, 1 setting
        mind: hold it well

        1: full, 1000 x 500
          1 x side 600 x 250.5
          1. guided saw, along the width at 600, from 0 to 500
          2. table saw, fence at 250.5, along the length at 250.5, from 0 to 600

        left over
          397 x 500 from 1

        waste or labour
          this plan, large leftover: 1 sheet, 1 setting, 1 of 2 cuts to mark, no leftover
        """,
        CutPlanText.of(plan));
  }
}
