package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.BoltHole;
import sawstead.brief.Saw;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.Draft;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/** The bolts that hold the saw down, through its feet and the stand's top. */
final class BoltUnit implements Unit {

  /**
   * How much wider the bore in the top is than the hole in the foot, mm (common practice, no
   * source).
   */
  private static final double EASE = 0.5;

  /** Room for washer and nut below the top, mm (common practice, no source). */
  private static final double NUT = 12;

  /** Least wood beside a hole in the top, mm; less is a notch in its edge. */
  private static final double WOOD = 2;

  /** Width of the washer over the hole, mm (common practice, no source). */
  private static final double WASHER = 10;

  private final Site site;
  private final Saw saw;

  BoltUnit(Site site) {
    this.site = site;
    saw = site.saw();
  }

  /** Room beside the middle of a bolt for its washer, mm. */
  static double room(BoltHole hole) {
    return hole.diameter().nominal() / 2 + WASHER;
  }

  @Override
  public void place(Draft draft) {}

  private void demandOnTop(Draft draft, BoltHole hole, int index) {
    Area top = site.stand();
    double x = hole.x().nominal();
    double y = hole.y().nominal();
    double half = hole.diameter().nominal() / 2 + EASE + WOOD;
    if (!top.holds(new Area(x - half, x + half, y - half, y + half))) {
      throw new DesignException(
          "saw.bolts.at[" + index + "]",
          "the bolt at x %s, y %s has no room on the stand's top (x %s to %s, y %s to %s)"
              .formatted(
                  draft.length(x),
                  draft.length(y),
                  draft.length(top.left()),
                  draft.length(top.right()),
                  draft.length(top.front()),
                  draft.length(top.rear())),
          "measure it again from the blade and the table's front edge, or make the stand larger"
              + " (station.stand)");
    }
  }

  @Override
  public void cut(Draft draft) {
    double top = site.levels().sawFeet();
    double under = site.levels().topUnder();
    List<Fastener> bolts = new ArrayList<>();
    for (BoltHole hole : saw.bolts()) {
      Vec at = new Vec(hole.x().nominal(), hole.y().nominal(), top);
      double diameter = hole.diameter().nominal();
      demandOnTop(draft, hole, bolts.size());
      draft.change(StandUnit.TOP, b -> b.bored(at, Axis.Z, diameter + EASE));
      double half = room(hole);
      draft.keepClear(
          new Box(
              new Vec(at.x() - half, at.y() - half, under - NUT),
              new Vec(at.x() + half, at.y() + half, under)));
      bolts.add(
          new Fastener(
              StandUnit.TOP + "/bolt-" + (bolts.size() + 1),
              FastenerKind.BOLT,
              List.of(StandUnit.TOP),
              at,
              new Vec(0, 0, -1),
              top - under + NUT,
              Math.floor(diameter),
              0,
              diameter + WASHER,
              false,
              "bolt"));
    }
    draft.fasten(bolts);
    if (bolts.isEmpty()) {
      draft.remark(
          Remark.Weight.STOP,
          "saw-loose",
          List.of("saw/body"),
          "nothing holds the saw down; a loose saw walks and tips",
          "measure the bolt holes in its feet (saw.bolts)");
    } else if (!saw.boltsMeasured()) {
      draft.remark(
          Remark.Weight.MIND,
          "bolts-assumed",
          List.of(StandUnit.TOP),
          "the bolt holes are assumed to lie in the middle of the feet",
          "mark them through the saw's own feet before you drill, or measure them (saw.bolts)");
    }
  }
}
