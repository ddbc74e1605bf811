package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.HingeStock;
import sawstead.brief.Mount;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Side;
import sawstead.joinery.HingeJoint;
import sawstead.joinery.HingeLine;
import sawstead.joinery.HingeProfile;
import sawstead.joinery.Joined;
import sawstead.joinery.Stretch;
import sawstead.measure.Measured;
import sawstead.solid.Axis;
import sawstead.solid.Bevel;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Face;
import sawstead.solid.Outline;
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
 * The outfeed: four walls without a bottom on the stand's top (or a box with a floor hung behind
 * it), one or two lids on continuous hinges, relief grooves in line with the miter slots, and a
 * folding leaf on bars that slide out of the back.
 *
 * <p>Its side walls begin where the lids begin; the front wall stands further back where a dust
 * port or a motor needs the room, so that the lids are carried up to the saw.
 */
final class OutfeedUnit implements Unit {

  /** Between the two lids, mm. */
  static final double LID_GAP = 2;

  /** Between the box and the leaf, mm. */
  static final double LEAF_GAP = 2;

  /** Least distance of a groove's wall from the gap between two lids, mm. */
  private static final double FROM_GAP = 20;

  /** Section of the bars that carry the leaf, mm (common practice, no source). */
  private static final double BAR_HEIGHT = 45;

  /** Air round a bar, mm. */
  private static final double BAR_AIR = 1;

  /** How much of a pulled-out bar stays in the box, mm (common practice, no source). */
  private static final double BAR_STAYS = 130;

  /** How far short of the leaf's edge a pulled-out bar ends, mm. */
  private static final double BAR_SHORT = 25;

  /** Edge of a lid that a hinge leaf leaves free, mm. */
  private static final double EDGE_LEFT = 1.5;

  /** How far a lid opens, degrees: past upright, on a stay (common practice, no source). */
  private static final double OPEN = 105;

  private final Site site;
  private final Site.BoxPlan plan;
  private final OutfeedWish wish;
  private final Joints joints;
  private final double t;
  private final double walls;

  OutfeedUnit(Site site, Site.BoxPlan plan, OutfeedWish wish) {
    this.site = site;
    this.plan = plan;
    this.wish = wish;
    joints = new Joints(wish.joint());
    t = plan.wall().thickness().nominal();
    walls = hung() ? Math.max(plan.walls().front(), site.stand().rear()) : plan.walls().front();
  }

  private boolean hung() {
    return plan.mount() == Mount.HUNG;
  }

  private Area area() {
    return plan.walls();
  }

  @Override
  public void place(Draft draft) {
    Area a = area();
    double left = a.left() + t;
    double right = a.right() - t;
    double back = a.rear() - t;
    wall(draft, "side-left", new Area(a.left(), left, walls, a.rear()), Axis.X, false);
    wall(draft, "side-right", new Area(right, a.right(), walls, a.rear()), Axis.X, true);
    wall(
        draft,
        "front",
        new Area(left, right, plan.frontWall(), plan.frontWall() + t),
        Axis.Y,
        false);
    wall(draft, "back", new Area(left, right, back, a.rear()), Axis.Y, true);
    if (hung()) {
      Area floor = new Area(left, right, plan.frontWall() + t, back);
      draft.panel(
          "outfeed/floor",
          plan.wall(),
          floor.between(plan.foot(), plan.foot() + t),
          Axis.Z,
          true,
          Axis.X);
    }
    if (wish.lids() == 2) {
      double split = split();
      wall(
          draft,
          "divider",
          new Area(split - t / 2, split + t / 2, plan.frontWall() + t, back),
          Axis.X,
          true);
      lid(draft, "lid-left", a.left(), split - LID_GAP / 2);
      lid(draft, "lid-right", split + LID_GAP / 2, a.right());
    } else {
      lid(draft, "lid", a.left(), a.right());
    }
    if (plan.leafDepth() > 0) {
      placeLeaf(draft);
    }
    new ContentRow("outfeed", wish.contents())
        .place(
            draft,
            new Area(left, right, plan.frontWall() + t, back),
            plan.foot() + (hung() ? t : 0),
            plan.rim());
    tellSteps(draft);
  }

  private void wall(Draft draft, String name, Area area, Axis through, boolean towardsPlus) {
    double foot = name.equals("divider") && hung() ? plan.foot() + t : plan.foot();
    Axis grain = through == Axis.X ? Axis.Y : Axis.X;
    draft.panel(
        "outfeed/" + name,
        plan.wall(),
        area.between(foot, plan.rim()),
        through,
        towardsPlus,
        grain);
  }

  private void lid(Draft draft, String name, double from, double to) {
    Area lid = new Area(from, to, area().front(), area().rear());
    draft.panel(
        "outfeed/" + name,
        plan.lid(),
        lid.between(plan.rim(), plan.surface()),
        Axis.Z,
        true,
        Axis.X);
  }

  /** Where two lids meet: the middle, or as near as the grooves allow. */
  private double split() {
    double middle = area().centreX();
    double best = middle;
    for (Groove groove : Groove.of(site, wish)) {
      if (Math.abs(groove.x() - middle) < groove.width() / 2 + FROM_GAP) {
        best = groove.x() + Math.copySign(groove.width() / 2 + FROM_GAP, middle - groove.x());
      }
    }
    return best;
  }

  private void placeLeaf(Draft draft) {
    Area a = area();
    double front = a.rear() + LEAF_GAP;
    double rear = front + plan.leafDepth();
    draft.panel(
        "outfeed/leaf",
        plan.lid(),
        new Area(a.left(), a.right(), front, rear).between(plan.rim(), plan.surface()),
        Axis.Z,
        true,
        Axis.X);
    double end = rear - BAR_SHORT;
    double length = Math.min(end - a.rear() + BAR_STAYS, a.rear() - t - plan.frontWall() - t);
    if (length < end - a.rear() + BAR_STAYS) {
      draft.remark(
          Remark.Weight.MIND,
          "leaf-bars-short",
          List.of("outfeed/leaf"),
          "the bars under the leaf can only be %.0f mm long, so %.0f mm of them stay in the box when the leaf is up"
              .formatted(length, length - (end - a.rear())),
          "make the outfeed's box deeper or the leaf less deep");
    }
    double top = plan.rim();
    for (String name : List.of("left", "right")) {
      boolean left = name.equals("left");
      double x = left ? a.left() + t + BAR_AIR : a.right() - 2 * t - BAR_AIR;
      Area bar = new Area(x, x + t, end - length, end);
      draft.panel(
          "outfeed/bar-" + name,
          plan.wall(),
          bar.between(top - BAR_HEIGHT, top),
          Axis.X,
          !left,
          Axis.Y);
      double guideFrom = left ? a.left() + t : a.right() - 2 * t - BAR_AIR;
      Area guide = new Area(guideFrom, guideFrom + t + BAR_AIR, 0, 0);
      Box strip =
          new Area(guide.left(), guide.left() + t, plan.frontWall() + t, a.rear() - t)
              .between(top - 2 * BAR_HEIGHT, top - BAR_HEIGHT);
      strip = left ? strip : shifted(strip, BAR_AIR);
      draft.panel("outfeed/guide-" + name, plan.wall(), strip, Axis.X, !left, Axis.Y);
      draft.touch("outfeed/bar-" + name, "outfeed/guide-" + name);
      draft.touch("outfeed/bar-" + name, "outfeed/leaf");
    }
  }

  private static Box shifted(Box box, double dx) {
    Vec by = new Vec(dx, 0, 0);
    return new Box(box.low().plus(by), box.high().plus(by));
  }

  private void tellSteps(Draft draft) {
    List<String> box =
        new ArrayList<>(
            List.of("outfeed/side-left", "outfeed/side-right", "outfeed/front", "outfeed/back"));
    for (String more :
        List.of("outfeed/divider", "outfeed/floor", "outfeed/guide-left", "outfeed/guide-right")) {
      if (draft.hasBoard(more)) {
        box.add(more);
      }
    }
    draft.step(
        box,
        hung()
            ? "build the box, then screw it to the stand's rear"
            : "build the box, then screw it down from below the top",
        hung() ? new Vec(0, -1, 0) : new Vec(0, 0, -1),
        List.of(
            "check the drop to the saw's table with a straightedge before the last screw; shim under the box, never over"));
    draft.step(
        lids(draft),
        "hang on its hinge; drill every hinge screw's pilot",
        new Vec(0, 0, -1),
        List.of(
            "fit a stay: a lid that falls shut crushes fingers",
            "mark the grooves from the saw's real slots before you rout them"));
    if (draft.hasBoard("outfeed/leaf")) {
      draft.step(
          List.of("outfeed/bar-left", "outfeed/bar-right", "outfeed/leaf"),
          "slide the bars in, then hang the leaf on its hinge",
          new Vec(0, -1, 0),
          List.of("pull both bars out before anything rests on the leaf"));
    }
  }

  private static List<String> lids(Draft draft) {
    return List.of("outfeed/lid", "outfeed/lid-left", "outfeed/lid-right").stream()
        .filter(draft::hasBoard)
        .toList();
  }

  @Override
  public void cut(Draft draft) {
    for (Groove groove : Groove.of(site, wish)) {
      groove.cut(draft, plan, lids(draft));
    }
    double chamfer = wish.chamfer().nominal();
    if (chamfer > 0) {
      for (String id : lids(draft)) {
        draft.change(
            id,
            b ->
                b.with(
                    leading(
                        b.outline(),
                        b.local(new Vec(area().left(), area().front(), plan.rim())).y(),
                        chamfer)));
      }
    }
    if (plan.leafDepth() > 0) {
      for (String name : List.of("left", "right")) {
        Box bar = draft.board("outfeed/bar-" + name).box();
        Box air =
            new Box(
                new Vec(bar.low().x() - BAR_AIR, area().rear() - t, bar.low().z() - BAR_AIR),
                new Vec(bar.high().x() + BAR_AIR, area().rear(), bar.high().z()));
        draft.change("outfeed/back", b -> b.cutBox(air, "recess"));
      }
    }
  }

  /** The chamfer along the edge of a lid that boards meet first. */
  private static Bevel leading(Outline outline, double v, double leg) {
    List<Corner> corners = outline.corners();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      if (Math.abs(from.v() - v) < 1e-6 && Math.abs(to.v() - v) < 1e-6) {
        return Bevel.alongEdge(outline, i, Face.FRONT, leg, leg);
      }
    }
    throw new IllegalStateException("a lid without a leading edge");
  }

  @Override
  public void join(Draft draft) {
    for (String side : List.of("outfeed/side-left", "outfeed/side-right")) {
      draft.join(joints.corner(), side, "outfeed/front");
      draft.join(joints.corner(), side, "outfeed/back");
      if (draft.hasBoard("outfeed/floor")) {
        draft.join(joints.butt(), side, "outfeed/floor");
      }
    }
    if (draft.hasBoard("outfeed/floor")) {
      draft.join(joints.butt(), "outfeed/front", "outfeed/floor");
      draft.join(joints.butt(), "outfeed/back", "outfeed/floor");
    }
    if (draft.hasBoard("outfeed/divider")) {
      draft.join(joints.butt(), "outfeed/front", "outfeed/divider");
      draft.join(joints.butt(), "outfeed/back", "outfeed/divider");
    }
    if (draft.hasBoard("outfeed/leaf")) {
      draft.join(joints.lap(false), "outfeed/guide-left", "outfeed/side-left");
      draft.join(joints.lap(false), "outfeed/guide-right", "outfeed/side-right");
    }
    joinToStand(draft);
    for (String lid : lids(draft)) {
      hang(draft, lid);
    }
    if (draft.hasBoard("outfeed/leaf")) {
      hangLeaf(draft);
    }
  }

  private void joinToStand(Draft draft) {
    if (hung()) {
      for (String part :
          List.of(
              StandUnit.packer(Side.REAR),
              StandUnit.stretcher(Side.REAR, true),
              StandUnit.face(3),
              StandUnit.face(4))) {
        if (draft.hasBoard(part) && touches(draft, "outfeed/front", part)) {
          draft.join(Joints.screwed(true), "outfeed/front", part);
        }
      }
      return;
    }
    if (wish.shim().nominal() == 0) {
      for (String wall :
          List.of(
              "outfeed/side-left",
              "outfeed/side-right",
              "outfeed/front",
              "outfeed/back",
              "outfeed/divider")) {
        if (draft.hasBoard(wall) && touches(draft, StandUnit.TOP, wall)) {
          draft.join(Joints.screwed(true), StandUnit.TOP, wall);
        }
      }
    } else {
      draft.remark(
          Remark.Weight.NOTE,
          "box-on-shims",
          List.of("outfeed/side-left", "outfeed/side-right"),
          "the outfeed stands on %.1f mm of shims".formatted(wish.shim().nominal()),
          "screw down through the shims from below the top");
    }
  }

  private static boolean touches(Draft draft, String a, String b) {
    return sawstead.joinery.Patch.between(draft.board(a), draft.board(b)).isPresent();
  }

  private void hang(Draft draft, String lid) {
    Side side =
        switch (lid) {
          case "outfeed/lid-left" -> Side.LEFT;
          case "outfeed/lid-right" -> Side.RIGHT;
          default -> plan.hinge();
        };
    String wall =
        switch (side) {
          case LEFT -> "outfeed/side-left";
          case RIGHT -> "outfeed/side-right";
          default -> "outfeed/back";
        };
    HingeJoint hinge =
        HingeJoint.outside(
            lid + "-hinge",
            profile(draft, lid),
            side == Side.REAR ? Axis.Y : Axis.X,
            side != Side.LEFT);
    if (side == Side.REAR) {
      hinge = hinge.keepingClear(grooves(draft, lid));
    }
    Joined joined = draft.join(hinge, wall, lid);
    HingeLine line = joined.axis().orElseThrow();
    Vec opens =
        switch (side) {
          case LEFT -> new Vec(0, -1, 0);
          case RIGHT -> new Vec(0, 1, 0);
          default -> new Vec(-1, 0, 0);
        };
    List<Contact> contacts = new ArrayList<>(hingeContacts(joined, lid, wall));
    for (String other :
        List.of(
            "outfeed/front",
            "outfeed/back",
            "outfeed/side-left",
            "outfeed/side-right",
            "outfeed/divider")) {
      if (draft.hasBoard(other)) {
        contacts.add(new Contact(lid, other));
        draft.touch(lid, other);
      }
    }
    draft.mover(
        new Mover(
            lid + "-opens",
            moving(joined, lid),
            new Turn(line.at(), opens, 0, OPEN, 0),
            contacts.stream().distinct().toList()));
  }

  private void hangLeaf(Draft draft) {
    Joined joined =
        draft.join(
            HingeJoint.underCorner("outfeed/leaf-hinge", profile(draft, "outfeed/leaf"))
                .keepingClear(bars(draft)),
            "outfeed/back",
            "outfeed/leaf");
    HingeLine line = joined.axis().orElseThrow();
    draft.mover(
        new Mover(
            "outfeed/leaf-folds",
            moving(joined, "outfeed/leaf"),
            new Turn(line.at(), new Vec(-1, 0, 0), 0, 90, 0),
            hingeContacts(joined, "outfeed/leaf", "outfeed/back")));
    for (String name : List.of("left", "right")) {
      String bar = "outfeed/bar-" + name;
      double in = plan.leafDepth();
      double room = draft.board(bar).box().low().y() - plan.frontWall() - t;
      draft.mover(
          new Mover(
              bar + "-slides",
              List.of(bar),
              new Slide(new Vec(0, 1, 0), -Math.min(in, room), 0, 0),
              List.of(
                  new Contact(bar, "outfeed/guide-" + name), new Contact(bar, "outfeed/leaf"))));
    }
  }

  /** The bodies that turn with the lid: the lid and the hinge's leaf on it. */
  private static List<String> moving(Joined joined, String lid) {
    List<String> ids = new ArrayList<>(List.of(lid));
    joined.bodies().stream()
        .map(b -> b.id())
        .filter(id -> id.contains("/leaf-b"))
        .forEach(ids::add);
    return ids;
  }

  private static List<Contact> hingeContacts(Joined joined, String a, String b) {
    List<Contact> contacts = new ArrayList<>();
    contacts.add(new Contact(a, b));
    for (var one : joined.bodies()) {
      contacts.add(new Contact(one.id(), a));
      contacts.add(new Contact(one.id(), b));
      for (var other : joined.bodies()) {
        if (!one.id().equals(other.id())) {
          contacts.add(new Contact(one.id(), other.id()));
        }
      }
    }
    return contacts.stream().distinct().toList();
  }

  /**
   * Stretches along x that hinge screws keep out of: the relief grooves that cross the hinge line.
   */
  private List<Stretch> grooves(Draft draft, String lid) {
    Box box = draft.board(lid).box();
    return Groove.of(site, wish).stream()
        .filter(g -> g.x() > box.low().x() && g.x() < box.high().x())
        .map(g -> new Stretch(g.x() - g.width() / 2, g.x() + g.width() / 2))
        .toList();
  }

  /** Stretches along x where the bars pass under the leaf. */
  private static List<Stretch> bars(Draft draft) {
    List<Stretch> stretches = new ArrayList<>();
    for (String name : List.of("outfeed/bar-left", "outfeed/bar-right")) {
      Box bar = draft.board(name).box();
      stretches.add(new Stretch(bar.low().x() - 2 * BAR_AIR, bar.high().x() + 2 * BAR_AIR));
    }
    return stretches;
  }

  /** The hinge's section; its leaves are no wider than the edge that one of them lies on. */
  private HingeProfile profile(Draft draft, String lid) {
    HingeStock h = wish.hardware();
    double edge = plan.lid().thickness().nominal() - EDGE_LEFT;
    double width = mm(h.leafWidth());
    if (width > edge) {
      if (h.leafWidth().origin() == Measured.Origin.DEFAULT) {
        width = edge;
      } else {
        draft.remark(
            Remark.Weight.STOP,
            "hinge-proud",
            List.of(lid),
            "a hinge leaf of %.1f mm does not fit on the edge of a lid of %.1f mm"
                .formatted(width, plan.lid().thickness().nominal()),
            "choose a hinge whose leaves are at most %.1f mm from the pin".formatted(edge));
      }
    }
    return new HingeProfile(mm(h.knuckle()), width, mm(h.leafThickness()), mm(h.pitch()));
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }
}
