package sawstead.layout.sheet;

import java.util.ArrayList;
import java.util.List;
import sawstead.layout.Board;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.ShopStep;

/** A line of the shop sheet's table of cuts. */
sealed interface CutRow {
  /** Above the cuts along the rail of one sheet. */
  record OfSheet(String says) implements CutRow {}

  /** Above the cuts at one setting of the table saw. */
  record OfSetting(int number, ShopStep first) implements CutRow {}

  /** A cut. */
  record OfCut(ShopStep step) implements CutRow {}

  /** All lines in the order of work. */
  static List<CutRow> of(Breakdown breakdown, StepWords words) {
    List<CutRow> rows = new ArrayList<>();
    String above = "";
    String setting = "";
    int settings = 0;
    for (ShopStep step : breakdown.steps()) {
      String now = step.isMarked() ? sheet(breakdown, step) : words.setting(step);
      if (!now.equals(above)) {
        // A cut along the rail in between leaves fence and stop where they are.
        settings += step.isMarked() || now.equals(setting) ? 0 : 1;
        setting = step.isMarked() ? setting : now;
        rows.add(step.isMarked() ? new OfSheet(now) : new OfSetting(settings, step));
        above = now;
      }
      rows.add(new OfCut(step));
    }
    return rows;
  }

  private static String sheet(Breakdown breakdown, ShopStep step) {
    int number = step.sheet();
    var plan = breakdown.plan().sheets().get(number - 1);
    Board board = breakdown.board(plan.stock());
    double mass = board.mass(plan.length(), plan.width());
    if (step.isSellers()) {
      return "At the seller's, sheet " + number + ": " + plan.stock();
    }
    // Over 23 kg is carried by two: common practice, no source.
    return "Guided saw, sheet "
        + number
        + ": "
        + plan.stock()
        + ", "
        + breakdown.words().mass(mass)
        + (mass > 23 && !breakdown.isCutBySeller(number) ? ", two carry it" : "");
  }
}
