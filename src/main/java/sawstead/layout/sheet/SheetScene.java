package sawstead.layout.sheet;

import java.util.ArrayList;
import java.util.List;
import sawstead.layout.CutPlan;
import sawstead.layout.Direction;
import sawstead.layout.Offcut;
import sawstead.layout.PlacedPiece;
import sawstead.layout.SheetPlan;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.CutPiece;
import sawstead.layout.shop.ShopStep;

/**
 * What every drawing of a sheet shows.
 *
 * @param number of the sheet, from 1
 * @param stock name of sheet or offcut
 * @param length of the sheet, along the grain, mm
 * @param width mm
 * @param panels finished panels
 * @param rests offcuts worth keeping
 * @param flaws places that no panel may have
 * @param kerfs of all cuts, by order; each lies inside the piece that it cuts
 */
record SheetScene(
    int number,
    String stock,
    double length,
    double width,
    List<Shape.Panel> panels,
    List<Shape.Rest> rests,
    List<Shape.Flaw> flaws,
    List<Shape.Kerf> kerfs) {
  SheetScene {
    panels = List.copyOf(panels);
    rests = List.copyOf(rests);
    flaws = List.copyOf(flaws);
    kerfs = List.copyOf(kerfs);
  }

  static SheetScene of(Breakdown breakdown, int number) {
    CutPlan plan = breakdown.plan();
    SheetPlan sheet = plan.sheets().get(number - 1);
    List<Shape.Panel> panels = new ArrayList<>();
    for (PlacedPiece p : sheet.pieces()) {
      panels.add(new Shape.Panel(p.part(), p.x(), p.y(), p.length(), p.width()));
    }
    List<Shape.Rest> rests = new ArrayList<>();
    for (Offcut o : plan.offcuts()) {
      if (o.sheet() == number) {
        rests.add(new Shape.Rest(o.x(), o.y(), o.length(), o.width()));
      }
    }
    List<Shape.Flaw> flaws =
        breakdown.defects(sheet.stock()).stream()
            .map(d -> new Shape.Flaw(d.x(), d.y(), d.length(), d.width()))
            .toList();
    List<Shape.Kerf> kerfs = breakdown.steps(number).stream().map(SheetScene::kerf).toList();
    return new SheetScene(
        number, sheet.stock(), sheet.length(), sheet.width(), panels, rests, flaws, kerfs);
  }

  private static Shape.Kerf kerf(ShopStep step) {
    boolean along = step.cut().along() == Direction.LENGTH;
    CutPiece work = step.work();
    double low = along ? work.y() : work.x();
    double high = low + (along ? work.width() : work.length());
    double from = Math.max(low, step.cut().at());
    double size = Math.min(high, step.cut().at() + step.kerf()) - from;
    return new Shape.Kerf(
        step.cut().order(),
        step.cut().guide(),
        step.cut().setting().orElse(Double.NaN),
        along,
        along ? work.x() : from,
        along ? from : work.y(),
        along ? work.length() : size,
        along ? size : work.width());
  }
}
