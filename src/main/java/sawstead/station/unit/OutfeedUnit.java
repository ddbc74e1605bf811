package sawstead.station.unit;

import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Mount;
import sawstead.brief.OutfeedWish;
import sawstead.brief.ScrewStock;
import sawstead.brief.Side;
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
 * The outfeed's box: four walls without a bottom on the stand's top, or a box with a floor hung
 * behind it. Its side walls begin where the lids begin; the front wall stands further back where a
 * dust port or a motor needs the room, so that the lids are carried up to the saw.
 */
final class OutfeedUnit implements Unit {

  static final String LEFT = "outfeed/side-left";
  static final String RIGHT = "outfeed/side-right";
  static final String FRONT = "outfeed/front";
  static final String BACK = "outfeed/back";
  static final String DIVIDER = "outfeed/divider";
  static final String FLOOR = "outfeed/floor";

  /** Screws that a hung box needs at least (common practice, no source). */
  private static final int LEAST_HELD = 4;

  /** Two faces nearer than this are in one plane, mm. */
  private static final double FLUSH = 1e-6;

  private final Site site;
  private final Site.BoxPlan plan;
  private final OutfeedWish wish;
  private final Joints joints;
  private final double t;

  OutfeedUnit(Site site, Site.BoxPlan plan, OutfeedWish wish) {
    this.site = site;
    this.plan = plan;
    this.wish = wish;
    joints = new Joints(wish.joint());
    t = plan.wall().thickness().nominal();
  }

  private boolean hung() {
    return plan.mount() == Mount.HUNG;
  }

  @Override
  public void place(Draft draft) {
    Area a = plan.walls();
    double left = a.left() + t;
    double right = a.right() - t;
    double back = a.rear() - t;
    double sides = hung() ? Math.max(a.front(), site.stand().rear()) : a.front();
    wall(draft, LEFT, new Area(a.left(), left, sides, a.rear()), Axis.X, false);
    wall(draft, RIGHT, new Area(right, a.right(), sides, a.rear()), Axis.X, true);
    wall(
        draft, FRONT, new Area(left, right, plan.frontWall(), plan.frontWall() + t), Axis.Y, false);
    wall(draft, BACK, new Area(left, right, back, a.rear()), Axis.Y, true);
    Area inside = new Area(left, right, plan.frontWall() + t, back);
    if (hung()) {
      draft.panel(FLOOR, plan.wall(), inside.between(plan.foot(), floor()), Axis.Z, true, Axis.X);
    }
    if (wish.lids() == 2) {
      double split = OutfeedLids.split(site, plan, wish);
      Area divider = new Area(split - t / 2, split + t / 2, inside.front(), back);
      draft.panel(DIVIDER, plan.wall(), divider.between(floor(), plan.rim()), Axis.X, true, Axis.Y);
    }
    new ContentRow("outfeed", wish.contents()).place(draft, inside, floor(), plan.rim());
    tellStep(draft);
  }

  /** What things in the box stand on. */
  private double floor() {
    return plan.foot() + (hung() ? t : 0);
  }

  private void wall(Draft draft, String id, Area area, Axis through, boolean towardsPlus) {
    Axis grain = through == Axis.X ? Axis.Y : Axis.X;
    draft.panel(
        id, plan.wall(), area.between(plan.foot(), plan.rim()), through, towardsPlus, grain);
  }

  private void tellStep(Draft draft) {
    draft.step(
        Stream.of(LEFT, RIGHT, FRONT, BACK, DIVIDER, FLOOR).filter(draft::hasBoard).toList(),
        hung()
            ? "build the box, then screw it to the stand's rear"
            : "build the box, then fix it down from inside, by its pockets",
        hung() ? new Vec(0, -1, 0) : new Vec(0, 0, -1),
        List.of(
            "check the drop to the saw's table with a straightedge before the last screw; shim under"
                + " the box, never over"));
  }

  @Override
  public void join(Draft draft) {
    for (String side : List.of(LEFT, RIGHT)) {
      boolean flush = plan.frontWall() - draft.board(side).box().low().y() < FLUSH;
      draft.join(joints.corner(flush), side, FRONT);
      draft.join(joints.corner(true), side, BACK);
    }
    if (draft.hasBoard(FLOOR)) {
      for (String wall : List.of(LEFT, RIGHT, FRONT, BACK)) {
        draft.join(joints.butt(), wall, FLOOR);
      }
    }
    if (draft.hasBoard(DIVIDER)) {
      draft.join(joints.butt(), FRONT, DIVIDER);
      draft.join(joints.butt(), BACK, DIVIDER);
    }
    if (hung()) {
      hang(draft);
    } else if (wish.shim().nominal() == 0) {
      Stream.of(LEFT, RIGHT, FRONT, BACK, DIVIDER)
          .filter(wall -> draft.hasBoard(wall) && touches(draft, StandUnit.TOP, wall))
          .forEach(wall -> settle(draft, wall));
    } else {
      draft.remark(
          Remark.Weight.NOTE,
          "box-on-shims",
          List.of(LEFT, RIGHT),
          "the outfeed stands on shims of %s".formatted(draft.length(wish.shim().nominal())),
          "screw down through the shims from below the top");
    }
  }

  /**
   * Fixes a wall to the stand's top by pockets from inside the box, since legs and stretchers stand
   * right below most of them; without pocket screws at hand, from below.
   */
  private void settle(Draft draft, String wall) {
    if (site.brief().workshop().screws().stream().anyMatch(ScrewStock::pocket)) {
      List<Box> drivers =
          Stream.of(LEFT, RIGHT, FRONT, BACK, DIVIDER)
              .filter(other -> !other.equals(wall) && draft.hasBoard(other))
              .map(other -> draft.board(other).box().grown(Joints.DRIVER))
              .toList();
      draft.join(Joints.pocket(true), wall, StandUnit.TOP, drivers);
    } else {
      draft.join(Joints.screwed(true), StandUnit.TOP, wall);
    }
  }

  /** Screws the front wall to whatever of the stand's rear it lies against, from inside the box. */
  private void hang(Draft draft) {
    int held =
        Stream.of(
                StandUnit.packer(Side.REAR),
                StandUnit.stretcher(Side.REAR, true),
                StandUnit.face(3),
                StandUnit.face(4))
            .filter(part -> draft.hasBoard(part) && touches(draft, FRONT, part))
            .mapToInt(part -> draft.join(Joints.screwed(true), FRONT, part).fasteners().size())
            .sum();
    if (held < LEAST_HELD) {
      draft.remark(
          Remark.Weight.STOP,
          "outfeed-unsupported",
          List.of(FRONT),
          "the outfeed's front wall finds room for %d screws into the stand, %d carry it"
              .formatted(held, LEAST_HELD),
          "leave the stand's depth out, so that its rear reaches back to the outfeed");
    }
  }

  private static boolean touches(Draft draft, String a, String b) {
    return Patch.between(draft.board(a), draft.board(b)).isPresent();
  }
}
