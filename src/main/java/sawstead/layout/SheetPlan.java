package sawstead.layout;

import java.util.List;

/**
 * One sheet of the plan.
 *
 * @param stock name of the stock
 * @param length extent along the grain, mm, factory edges included
 * @param width extent across the grain, mm
 * @param pieces what comes off it
 * @param cuts its cuts, by order
 */
public record SheetPlan(
    String stock, double length, double width, List<PlacedPiece> pieces, List<Cut> cuts) {
  public SheetPlan {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
  }
}
