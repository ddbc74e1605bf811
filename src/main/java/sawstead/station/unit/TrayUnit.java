package sawstead.station.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.brief.BoltHole;
import sawstead.brief.Footing;
import sawstead.brief.Sheet;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * Under a saw with an open bottom: an opening in the stand's top and a shallow tray hung below it
 * that catches the dust.
 */
final class TrayUnit implements Unit {

  /** Depth of the tray, mm (common practice, no source). */
  private static final double DEPTH = 50;

  private final Site site;
  private final Area wanted;
  private final Area opening;
  private final double t;

  TrayUnit(Site site, Footing footing) {
    this.site = site;
    t = site.thickness();
    Area bay = new StandFrame(site).bay().inset(t);
    wanted = Area.of(footing);
    Area open =
        new Area(
            Math.max(wanted.left(), bay.left()),
            Math.min(wanted.right(), bay.right()),
            Math.max(wanted.front(), bay.front()),
            Math.min(wanted.rear(), bay.rear()));
    for (BoltHole hole : site.saw().bolts()) {
      open = besideNut(open, hole);
    }
    opening = open;
  }

  /**
   * The opening with the strips around it clear of a bolt's washer and nut: the side that has to
   * move least is set inward, but never so far that less than half of the opening is left.
   */
  private Area besideNut(Area open, BoltHole hole) {
    double x = hole.x().nominal();
    double y = hole.y().nominal();
    double half = BoltUnit.room(hole);
    Area nut = new Area(x - half, x + half, y - half, y + half);
    Area outer = open.inset(-t);
    boolean apart =
        nut.right() <= outer.left()
            || outer.right() <= nut.left()
            || nut.rear() <= outer.front()
            || outer.rear() <= nut.front();
    if (apart || open.holds(nut)) {
      return open;
    }
    List<Area> smaller = new ArrayList<>();
    double left = nut.right() + t;
    double right = nut.left() - t;
    double front = nut.rear() + t;
    double rear = nut.front() - t;
    if (left < open.right()) {
      smaller.add(new Area(left, open.right(), open.front(), open.rear()));
    }
    if (right > open.left()) {
      smaller.add(new Area(open.left(), right, open.front(), open.rear()));
    }
    if (front < open.rear()) {
      smaller.add(new Area(open.left(), open.right(), front, open.rear()));
    }
    if (rear > open.front()) {
      smaller.add(new Area(open.left(), open.right(), open.front(), rear));
    }
    return smaller.stream()
        .max(Comparator.comparingDouble(TrayUnit::size))
        .filter(o -> size(o) >= size(wanted) / 2)
        .orElse(open);
  }

  private static double size(Area area) {
    return area.width() * area.depth();
  }

  @Override
  public void place(Draft draft) {
    double top = site.levels().topUnder();
    double floor = top - DEPTH;
    Sheet sheet = site.sheet();
    Area o = opening;
    strip(
        draft,
        "left",
        new Area(o.left() - t, o.left(), o.front() - t, o.rear() + t),
        Axis.X,
        false);
    strip(
        draft,
        "right",
        new Area(o.right(), o.right() + t, o.front() - t, o.rear() + t),
        Axis.X,
        true);
    strip(draft, "front", new Area(o.left(), o.right(), o.front() - t, o.front()), Axis.Y, false);
    strip(draft, "rear", new Area(o.left(), o.right(), o.rear(), o.rear() + t), Axis.Y, true);
    Area all = new Area(o.left() - t, o.right() + t, o.front() - t, o.rear() + t);
    draft.panel(
        "tray/floor",
        sheet,
        all.between(floor - t, floor),
        Axis.Z,
        true,
        all.width() >= all.depth() ? Axis.X : Axis.Y);
    if (!wanted.equals(opening)) {
      draft.remark(
          Remark.Weight.NOTE,
          "opening-clipped",
          List.of("stand/top"),
          "the opening under the saw is cut to %s x %s, so that the tray hangs clear of stretchers and bolts"
              .formatted(draft.length(opening.width()), draft.length(opening.depth())),
          "");
    }
    draft.step(
        List.of("tray/left", "tray/right", "tray/front", "tray/rear", "tray/floor"),
        "screw the four strips under the top round its opening, then the floor, which comes off to be emptied",
        new Vec(0, 0, 1),
        List.of("empty it before it is full; fine wood dust burns and harms lungs"));
  }

  private void strip(Draft draft, String name, Area area, Axis through, boolean towardsPlus) {
    double top = site.levels().topUnder();
    draft.panel(
        "tray/" + name,
        site.sheet(),
        area.between(top - DEPTH, top),
        through,
        towardsPlus,
        through == Axis.X ? Axis.Y : Axis.X);
  }

  @Override
  public void cut(Draft draft) {
    Box air = opening.between(site.levels().topUnder(), site.levels().sawFeet());
    draft.change(StandUnit.TOP, b -> b.cutBox(air, "opening"));
  }

  @Override
  public void join(Draft draft) {
    List<String> strips =
        new ArrayList<>(List.of("tray/left", "tray/right", "tray/front", "tray/rear"));
    for (String strip : strips) {
      draft.join(Joints.screwed(false), StandUnit.TOP, strip);
      draft.join(Joints.screwed(true), "tray/floor", strip);
    }
  }
}
