package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.CasterSet;
import sawstead.brief.Casters;
import sawstead.brief.MobileFrame;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.joinery.Screw;
import sawstead.joinery.Wood;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.PartKind;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Support;
import sawstead.station.Unit;

/**
 * What the base stands on: four swivel casters inside the legs' framing screws, a bought frame on
 * wheels round the base, or the floor.
 */
final class CasterUnit implements Unit {

  /**
   * Between a caster's plate and the row of framing screws behind a lapped stretcher, mm (common
   * practice, no source).
   */
  private static final double BEHIND_SCREWS = 4;

  /** A corner shelf of a bought frame, mm (common practice, no source). */
  private static final double SHELF = 60;

  /** From a plate's edge to the middle of its holes, mm (common practice, no source). */
  private static final double HOLE_INSET = 9;

  private final List<Box> plates = new ArrayList<>();
  private final Casters casters;
  private final Area base;
  private final Site site;

  CasterUnit(Site site) {
    this.site = site;
    casters = site.brief().casters();
    base = site.stand();
  }

  @Override
  public void place(Draft draft) {
    if (casters instanceof CasterSet set) {
      placeCasters(draft, set);
    } else if (casters instanceof MobileFrame frame) {
      placeFrame(draft, frame);
    } else {
      for (Vec corner : corners(base)) {
        draft.support(new Support(corner, 0, Double.POSITIVE_INFINITY));
      }
    }
  }

  private void placeCasters(Draft draft, CasterSet set) {
    double roll = site.levels().roll();
    double length = mm(set.plateLength());
    double width = mm(set.plateWidth());
    double plate = mm(set.plateThickness());
    double inset = 2 * site.thickness() + BEHIND_SCREWS;
    double dx = inset + length / 2;
    double dy = inset + width / 2;
    if (base.width() < 2 * inset + 2 * length || base.depth() < 2 * inset + 2 * width) {
      draft.remark(
          Remark.Weight.STOP,
          "caster-room",
          List.of("stand/base"),
          "four caster plates of %s x %s do not fit under the base inside the framing screws"
              .formatted(draft.length(length), draft.length(width)),
          "choose casters with smaller plates, or a larger stand");
    }
    int n = 1;
    for (Vec corner :
        corners(
            new Area(base.left() + dx, base.right() - dx, base.front() + dy, base.rear() - dy))) {
      Box box =
          new Box(
              new Vec(corner.x() - length / 2, corner.y() - width / 2, roll - plate),
              new Vec(corner.x() + length / 2, corner.y() + width / 2, roll));
      draft.box(PartKind.HARDWARE, "casters/plate-" + n, box, 0);
      draft.body(
          PartKind.ENVELOPE,
          "casters/swivel-" + n,
          Solids.cylinder(2 * mm(set.swivel()), roll - plate),
          Placement.at(new Vec(corner.x(), corner.y(), 0)),
          mm(set.mass()));
      draft.touch("casters/plate-" + n, "stand/base");
      draft.touch("casters/plate-" + n, "casters/swivel-" + n);
      draft.mover(
          new Mover(
              "casters/swivel-" + n + "-turns",
              List.of("casters/swivel-" + n),
              new Turn(new Vec(corner.x(), corner.y(), 0), new Vec(0, 0, 1), 0, 360, 0),
              List.of()));
      draft.keepClear(box.grown(1));
      plates.add(box);
      double offset = Math.max(0, mm(set.swivel()) - mm(set.wheel()) / 2);
      draft.support(new Support(new Vec(corner.x(), corner.y(), 0), offset, mm(set.rating())));
      n++;
    }
    draft.step(
        List.of("casters/plate-1", "casters/plate-2", "casters/plate-3", "casters/plate-4"),
        "turn the stand on its head with a helper; screw each plate on with its wheel swivelled aside",
        new Vec(0, 0, 1),
        List.of(
            "lock all four wheels before you cut; locks that stop the swivel as well are better"));
  }

  @Override
  public void join(Draft draft) {
    if (!(casters instanceof CasterSet set)) {
      return;
    }
    double plate = mm(set.plateThickness());
    double base = draft.board(StandUnit.BASE).thickness();
    Optional<Screw> screw = draft.fixings().shelf().choose(plate, base, false);
    if (screw.isEmpty()) {
      draft.remark(
          Remark.Weight.MIND,
          "caster-screws",
          List.of(StandUnit.BASE),
          "no screw at hand holds a caster's plate of %s in a base of %s"
              .formatted(draft.length(plate), draft.length(base)),
          "bolt the casters through the base, heads up, clear of the legs");
      return;
    }
    for (int n = 1; n <= plates.size(); n++) {
      draft.fasten(screws(plates.get(n - 1), "casters/plate-" + n, screw.get()));
    }
  }

  /** Four screws near the corners of a plate, from below into the base. */
  private List<Fastener> screws(Box plate, String id, Screw screw) {
    List<Fastener> screws = new ArrayList<>();
    Area holes =
        new Area(plate.low().x(), plate.high().x(), plate.low().y(), plate.high().y())
            .inset(HOLE_INSET);
    for (Vec hole : corners(holes)) {
      screws.add(
          new Fastener(
              id + "/caster-screw-" + (screws.size() + 1),
              FastenerKind.CASTER_SCREW,
              List.of(id, StandUnit.BASE),
              new Vec(hole.x(), hole.y(), plate.low().z()),
              new Vec(0, 0, 1),
              screw.length(),
              screw.gauge().shank(),
              screw.gauge().pilot(Wood.SOFT),
              screw.head(),
              false,
              "caster"));
    }
    return screws;
  }

  private void placeFrame(Draft draft, MobileFrame frame) {
    double width = mm(frame.insideWidth());
    double depth = mm(frame.insideDepth());
    double rim = mm(frame.rim());
    double added = mm(frame.addedHeight());
    double height = added + mm(frame.lip());
    if (width < base.width() || depth < base.depth()) {
      draft.remark(
          Remark.Weight.STOP,
          "frame-room",
          List.of("stand/base"),
          "the base is %s x %s, the bought frame takes %s x %s"
              .formatted(
                  draft.length(base.width()),
                  draft.length(base.depth()),
                  draft.length(width),
                  draft.length(depth)),
          "write a stand of at most that size (station.stand.width, station.stand.depth)");
    }
    Panel ring =
        new Panel(Outline.rectangle(-rim, -rim, width + rim, depth + rim), height)
            .with(new Opening(Outline.rectangle(0, 0, width, depth)));
    double x = base.centreX() - width / 2;
    double y = base.centreY() - depth / 2;
    draft.body(
        PartKind.ENVELOPE, "casters/frame", ring, Placement.at(new Vec(x, y, 0)), mm(frame.mass()));
    draft.touch("casters/frame", "stand/base");
    int n = 1;
    Area inner = new Area(x, x + width, y, y + depth);
    for (Vec c : corners(inner.inset(SHELF / 2))) {
      Area shelf =
          new Area(c.x() - SHELF / 2, c.x() + SHELF / 2, c.y() - SHELF / 2, c.y() + SHELF / 2);
      draft.box(PartKind.HARDWARE, "casters/shelf-" + n, shelf.between(0, added), 0);
      draft.touch("casters/shelf-" + n, "stand/base");
      draft.touch("casters/shelf-" + n, "casters/frame");
      n++;
    }
    for (Vec corner : corners(inner)) {
      draft.support(new Support(corner, 0, mm(frame.rating()) / 4));
    }
  }

  /** Front left, front right, rear right, rear left, as the legs are counted. */
  private static List<Vec> corners(Area area) {
    return List.of(
        new Vec(area.left(), area.front(), 0),
        new Vec(area.right(), area.front(), 0),
        new Vec(area.right(), area.rear(), 0),
        new Vec(area.left(), area.rear(), 0));
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }
}
