package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.HandWheel;
import sawstead.brief.JointKind;
import sawstead.brief.Side;
import sawstead.brief.WingWish;
import sawstead.joinery.Patch;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * A cubby box beside the saw, open on one side, screwed to the stand's side. Its top lies flush
 * with the outfeed, or below the fence's rails where they pass over it; its inner side is notched
 * for a hand-wheel.
 */
final class WingUnit implements Unit {

  /** Air round a hand-wheel, mm (common practice, no source). */
  private static final double WHEEL_AIR = 10;

  /** Screws that carry a wing, beyond which the next part of the stand is left alone. */
  private static final int ENOUGH = 4;

  /** Screws without which nothing carries a wing. */
  private static final int LEAST = 2;

  private final Site site;
  private final Site.WingPlan plan;
  private final WingWish wish;
  private final String name;
  private final Joints joints;
  private final double t;

  WingUnit(Site site, Site.WingPlan plan, WingWish wish) {
    this.site = site;
    this.plan = plan;
    this.wish = wish;
    name = "wing-" + plan.side().word();
    joints = new Joints(wish.joint());
    t = plan.sheet().thickness().nominal();
  }

  private boolean right() {
    return plan.side() == Side.RIGHT;
  }

  private String id(String part) {
    return name + "/" + part;
  }

  private boolean open(Side side) {
    return wish.opening() == side;
  }

  private boolean openOutside() {
    return open(plan.side());
  }

  @Override
  public void place(Draft draft) {
    Area a = plan.area();
    double under = plan.surface() - t;
    double innerX = right() ? a.left() : a.right() - t;
    double outerX = right() ? a.right() - t : a.left();
    draft.panel(id("top"), plan.sheet(), a.between(under, plan.surface()), Axis.Z, true, Axis.Y);
    upright(draft, "inner", new Area(innerX, innerX + t, a.front(), a.rear()), Axis.X, !right());
    if (!openOutside()) {
      upright(draft, "outer", new Area(outerX, outerX + t, a.front(), a.rear()), Axis.X, right());
    }
    Area inside = inside();
    if (!open(Side.FRONT)) {
      upright(
          draft,
          "front",
          new Area(inside.left(), inside.right(), a.front(), a.front() + t),
          Axis.Y,
          false);
    }
    if (!open(Side.REAR)) {
      upright(
          draft,
          "rear",
          new Area(inside.left(), inside.right(), a.rear() - t, a.rear()),
          Axis.Y,
          true);
    }
    draft.panel(
        id("bottom"),
        plan.sheet(),
        inside.between(plan.bottom(), plan.bottom() + t),
        Axis.Z,
        true,
        Axis.Y);
    new ContentRow(name, wish.contents()).place(draft, inside, plan.bottom() + t, under);
    if (plan.lowered()) {
      draft.remark(
          Remark.Weight.NOTE,
          "wing-lowered",
          List.of(id("top")),
          "the %s wing's top lies below the fence's rails, not flush with the table"
              .formatted(plan.side().word()),
          "write a depth that keeps it between the rails if it should carry boards");
    }
    List<String> parts = new ArrayList<>();
    for (String part : List.of("inner", "outer", "front", "rear", "bottom", "top")) {
      if (draft.hasBoard(id(part))) {
        parts.add(id(part));
      }
    }
    draft.step(
        parts,
        "build the box, then screw it to the stand from inside",
        new Vec(right() ? -1 : 1, 0, 0),
        List.of(
            "hold its top with a straightedge across the saw's table while you drive the first two screws"));
  }

  private void upright(Draft draft, String part, Area area, Axis through, boolean towardsPlus) {
    Axis grain = through == Axis.X ? Axis.Y : Axis.X;
    draft.panel(
        id(part),
        plan.sheet(),
        area.between(plan.bottom(), plan.surface() - t),
        through,
        towardsPlus,
        grain);
  }

  private Area inside() {
    return inside(plan, wish);
  }

  /** The clear space between a wing's uprights, seen from above. */
  static Area inside(Site.WingPlan plan, WingWish wish) {
    Area a = plan.area();
    double t = plan.sheet().thickness().nominal();
    boolean right = plan.side() == Side.RIGHT;
    boolean outer = wish.opening() != plan.side();
    return new Area(
        a.left() + (right || outer ? t : 0),
        a.right() - (!right || outer ? t : 0),
        a.front() + (wish.opening() == Side.FRONT ? 0 : t),
        a.rear() - (wish.opening() == Side.REAR ? 0 : t));
  }

  @Override
  public void cut(Draft draft) {
    HandWheel wheel = site.saw().wheel();
    if (wheel.side() != plan.side()) {
      return;
    }
    double radius = wheel.diameter().nominal() / 2 + WHEEL_AIR;
    double y = wheel.at().nominal();
    double z = site.levels().table() - wheel.below().nominal();
    Box inner = draft.board(id("inner")).box();
    double reach =
        right()
            ? site.body().right() + wheel.out().nominal()
            : -site.body().left() + wheel.out().nominal();
    double face = right() ? inner.low().x() : -inner.high().x();
    if (reach + WHEEL_AIR > face) {
      Box air =
          new Box(
              new Vec(
                  inner.low().x(),
                  Math.max(y - radius, inner.low().y()),
                  Math.max(z - radius, inner.low().z())),
              new Vec(
                  inner.high().x(),
                  Math.min(y + radius, inner.high().y()),
                  Math.min(z + radius, inner.high().z())));
      draft.change(id("inner"), b -> b.cutBox(air, "opening"));
    }
  }

  @Override
  public void join(Draft draft) {
    for (String side : List.of("inner", "outer")) {
      if (!draft.hasBoard(id(side))) {
        continue;
      }
      draft.join(
          wish.joint() == JointKind.RABBET ? joints.butt() : joints.corner(true),
          id(side),
          id("bottom"));
      for (String end : List.of("front", "rear")) {
        if (draft.hasBoard(id(end))) {
          draft.join(
              wish.joint() == JointKind.DADO ? joints.butt() : joints.corner(true),
              id(side),
              id(end));
        }
      }
    }
    for (String end : List.of("front", "rear")) {
      if (draft.hasBoard(id(end))) {
        draft.join(joints.butt(), id(end), id("bottom"));
      }
    }
    for (String part : List.of("inner", "outer", "front", "rear")) {
      if (draft.hasBoard(id(part))) {
        draft.join(joints.butt(), id("top"), id(part));
      }
    }
    joinToStand(draft);
  }

  /**
   * Screws the inner side to parts of the stand, in order, until enough hold; tells how many do.
   */
  private int hold(Draft draft, List<String> candidates, List<Box> keepClear) {
    int held = 0;
    for (String part : candidates) {
      if (held < ENOUGH
          && draft.hasBoard(part)
          && Patch.between(draft.board(id("inner")), draft.board(part)).isPresent()) {
        held +=
            draft
                .joinWhereRoom(Joints.screwed(true), id("inner"), part, keepClear)
                .fasteners()
                .size();
      }
    }
    return held;
  }

  private void joinToStand(Draft draft) {
    int held = 0;
    List<Box> drivers =
        Stream.of("bottom", "front", "rear")
            .filter(part -> draft.hasBoard(id(part)))
            .map(part -> draft.board(id(part)).box().grown(Joints.DRIVER))
            .toList();
    List<String> candidates =
        right()
            ? List.of(
                StandUnit.side(3),
                StandUnit.packer(Side.RIGHT),
                StandUnit.stretcher(Side.RIGHT, true),
                StandUnit.side(2))
            : List.of(
                StandUnit.side(4),
                StandUnit.packer(Side.LEFT),
                StandUnit.stretcher(Side.LEFT, true),
                StandUnit.side(1));
    held += hold(draft, candidates, drivers);
    if (held < LEAST) {
      // Under a low wing a straight driver has no room: held by a right-angle driver beats not
      // held.
      held += hold(draft, candidates, List.of());
    }
    if (held < LEAST) {
      double gap =
          right()
              ? plan.area().left() - site.stand().right()
              : site.stand().left() - plan.area().right();
      draft.remark(
          Remark.Weight.STOP,
          "wing-unsupported",
          List.of(id("inner")),
          gap > 0
              ? "the %s wing hangs %s beside the stand: nothing carries it"
                  .formatted(plan.side().word(), draft.length(gap))
              : "the %s wing finds room for %d screw(s) into the stand"
                  .formatted(plan.side().word(), held),
          "make the stand as wide as the table (station.stand.width at least %s), or leave it out"
              .formatted(draft.length(site.table().width() + 6)));
    } else if (held < ENOUGH) {
      draft.remark(
          Remark.Weight.NOTE,
          "joint-fewer",
          List.of(id("inner")),
          "only %d of %d screws into the stand found room for the %s wing"
              .formatted(held, ENOUGH, plan.side().word()),
          "make the wing lower or deeper where it meets the stand, and keep what is heavy out of it");
    }
  }
}
