package sawstead.station.unit;

import java.util.List;
import sawstead.brief.OutfeedWish;
import sawstead.joinery.HingeJoint;
import sawstead.joinery.HingeLine;
import sawstead.joinery.Joined;
import sawstead.joinery.Stretch;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * The leaf that overhangs behind the outfeed: hinged under its front edge, it folds down against
 * the back. Two bars carry it, which slide out of the box through notches in the back wall on
 * guides along the side walls.
 */
final class OutfeedLeaf implements Unit {

  static final String LEAF = "outfeed/leaf";
  static final String FOLDS = "outfeed/leaf-folds";

  /** Between the box and the leaf, mm. */
  private static final double GAP = 2;

  /** Height of a bar and of the guide below it, mm (common practice, no source). */
  private static final double BAR_HEIGHT = 45;

  /** Air round a bar, mm. */
  private static final double AIR = 1;

  /** How much of a pulled-out bar stays in the box, mm (common practice, no source). */
  private static final double STAYS = 130;

  /** How far short of the leaf's edge a pulled-out bar ends, mm. */
  private static final double SHORT = 25;

  private static final List<String> ENDS = List.of("left", "right");

  private final Site.BoxPlan plan;
  private final LeafHinge hinges;
  private final double t;

  OutfeedLeaf(Site.BoxPlan plan, OutfeedWish wish) {
    this.plan = plan;
    hinges = new LeafHinge(plan, wish.hardware());
    t = plan.wall().thickness().nominal();
  }

  static String bar(String end) {
    return "outfeed/bar-" + end;
  }

  private static String guide(String end) {
    return "outfeed/guide-" + end;
  }

  @Override
  public void place(Draft draft) {
    Area a = plan.walls();
    double front = a.rear() + GAP;
    double rear = front + plan.leafDepth();
    draft.panel(
        LEAF,
        plan.lid(),
        new Area(a.left(), a.right(), front, rear).between(plan.rim(), plan.surface()),
        Axis.Z,
        true,
        Axis.X);
    double out = rear - SHORT - a.rear();
    double length = Math.min(out + STAYS, a.rear() - 2 * t - plan.frontWall());
    if (length < out + STAYS) {
      draft.remark(
          Remark.Weight.MIND,
          "leaf-bars-short",
          List.of(LEAF),
          "the bars under the leaf can only be %s long, so %s of them stays in the box when the leaf is up"
              .formatted(draft.length(length), draft.length(length - out)),
          "make the outfeed's box %s deeper or its overhang that much less"
              .formatted(draft.length(out + STAYS - length)));
    }
    for (String end : ENDS) {
      placeBar(draft, end, rear - SHORT, length);
    }
    draft.step(
        List.of(guide("left"), guide("right"), bar("left"), bar("right"), LEAF),
        "screw the guides to the side walls, slide the bars in, then hang the leaf on its hinge",
        new Vec(0, -1, 0),
        List.of("pull both bars out before anything rests on the leaf"));
  }

  private void placeBar(Draft draft, String end, double tip, double length) {
    boolean left = end.equals("left");
    double inner = left ? plan.walls().left() + t : plan.walls().right() - t;
    double x = left ? inner + AIR : inner - AIR - t;
    double top = plan.rim();
    double room = tip - length - plan.frontWall() - t;
    // Drawn pushed in: only then can the leaf fold.
    double in = tip - Math.min(plan.leafDepth(), room);
    draft.panel(
        bar(end),
        plan.wall(),
        new Area(x, x + t, in - length, in).between(top - BAR_HEIGHT, top),
        Axis.X,
        !left,
        Axis.Y);
    double guide = left ? inner : inner - t;
    draft.panel(
        guide(end),
        plan.wall(),
        new Area(guide, guide + t, plan.frontWall() + t, plan.walls().rear() - t)
            .between(top - 2 * BAR_HEIGHT, top - BAR_HEIGHT),
        Axis.X,
        !left,
        Axis.Y);
    draft.touch(bar(end), guide(end));
    draft.touch(bar(end), LEAF);
  }

  @Override
  public void cut(Draft draft) {
    for (String end : ENDS) {
      Box bar = draft.board(bar(end)).box();
      Box air =
          new Box(
              new Vec(bar.low().x() - AIR, plan.walls().rear() - t, bar.low().z() - AIR),
              new Vec(bar.high().x() + AIR, plan.walls().rear(), bar.high().z()));
      draft.change(OutfeedUnit.BACK, b -> b.cutBox(air, "opening"));
    }
  }

  @Override
  public void join(Draft draft) {
    draft.join(Joints.lap(), guide("left"), OutfeedUnit.LEFT);
    draft.join(Joints.lap(), guide("right"), OutfeedUnit.RIGHT);
    HingeJoint hinge =
        HingeJoint.underCorner("outfeed/leaf-hinge", hinges.profile(draft, LEAF))
            .keepingClear(bars(draft));
    Joined joined = draft.join(hinge, OutfeedUnit.BACK, LEAF);
    HingeLine line = joined.axis().orElseThrow();
    draft.mover(
        new Mover(
            FOLDS,
            LeafHinge.moving(joined, LEAF),
            new Turn(line.at(), new Vec(-1, 0, 0), 0, 90, 0),
            LeafHinge.contacts(joined, LEAF, OutfeedUnit.BACK)));
    for (String end : ENDS) {
      double out =
          draft.board(LEAF).box().high().y() - SHORT - draft.board(bar(end)).box().high().y();
      if (out <= 0) {
        continue;
      }
      draft.mover(
          new Mover(
              bar(end) + "-slides",
              List.of(bar(end)),
              new Slide(new Vec(0, 1, 0), 0, out, 0),
              List.of(new Contact(bar(end), guide(end)), new Contact(bar(end), LEAF))));
    }
  }

  /** Stretches along x where the bars pass under the leaf. */
  private static List<Stretch> bars(Draft draft) {
    return ENDS.stream()
        .map(end -> draft.board(bar(end)).box())
        .map(box -> new Stretch(box.low().x() - 2 * AIR, box.high().x() + 2 * AIR))
        .toList();
  }
}
