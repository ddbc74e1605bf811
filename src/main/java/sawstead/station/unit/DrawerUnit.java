package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Content;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.joinery.Screw;
import sawstead.joinery.Wood;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.PartKind;
import sawstead.station.Unit;

/**
 * A drawer: sides, rear, inner front and floor, a front before them that fills the opening, a slide
 * on either side; in a wing, or in a case of its own that stands beside the station.
 */
final class DrawerUnit implements Unit {
  private static final List<String> SIDES = List.of("side-1", "side-2");
  private static final String INNER = "inner-front";
  private static final String REAR = "rear";
  private static final String FLOOR = "floor";
  private static final String FRONT = "front";

  private static final List<String> CASE =
      List.of("case-left", "case-right", "case-rear", "case-top", "case-floor");

  /** The slot by which it is pulled: width, height, and how far below the front's top. */
  private static final double GRIP_WIDE = 90;

  private static final double GRIP_HIGH = 26;
  private static final double GRIP_BELOW = 16;

  /** The least front that has room for it. */
  private static final double GRIP_NEEDS = 75;

  /** Mass of one half of a slide for each mm of its length, kg (common practice, no source). */
  private static final double SLIDE_MASS = 0.0006;

  /** Thread in the wood behind a slide, in diameters (common practice, no source). */
  private static final double HOLD = 2.2;

  private final DrawerPlan plan;
  private final DrawerBay bay;
  private final double t;

  DrawerUnit(DrawerPlan plan) {
    this.plan = plan;
    bay = plan.bay();
    t = plan.t();
  }

  private String id(String part) {
    return plan.id(part);
  }

  @Override
  public void place(Draft draft) {
    plan.shell().ifPresent(shell -> placeCase(draft, shell));
    placeSlides(draft);
    double low = plan.floorTop();
    double high = DrawerPlan.ROUND_BOX + plan.height();
    double near = t;
    double far = t + plan.depth();
    double left = plan.beside();
    double right = left + plan.width();
    panel(draft, SIDES.get(0), bay.box(near, far, left, left + t, low, high), bay.across(), false);
    panel(draft, SIDES.get(1), bay.box(near, far, right - t, right, low, high), bay.across(), true);
    boolean plus = bay.opensTowardsPlus();
    panel(draft, INNER, bay.box(near, near + t, left + t, right - t, low, high), bay.along(), plus);
    panel(draft, REAR, bay.box(far - t, far, left + t, right - t, low, high), bay.along(), !plus);
    Sheet floor = plan.floorSheet();
    draft.panel(
        id(FLOOR),
        floor,
        bay.box(near, far, left, right, DrawerPlan.ROUND_BOX, low),
        Axis.Z,
        true,
        bay.along());
    double gap = DrawerPlan.ROUND_FRONT;
    panel(
        draft,
        FRONT,
        bay.box(0, t, gap, bay.width() - gap, gap, bay.height() - gap),
        bay.along(),
        plus);
    Box inside = bay.box(near + t, far - t, left + t, right - t, low, bay.height() - gap);
    new ContentRow(plan.wish().id(), plan.wish().contents())
        .place(
            draft,
            new Area(inside.low().x(), inside.high().x(), inside.low().y(), inside.high().y()),
            inside.low().z(),
            inside.high().z());
    tellSteps(draft);
  }

  /** Box and front boards: grain along the longer horizontal way, upright boards lie. */
  private void panel(Draft draft, String part, Box box, Axis through, boolean towardsPlus) {
    Axis grain = through == Axis.X ? Axis.Y : Axis.X;
    draft.panel(id(part), plan.sheet(), box, through, towardsPlus, grain);
  }

  private void placeCase(Draft draft, Box shell) {
    Area all = new Area(shell.low().x(), shell.high().x(), shell.low().y(), shell.high().y());
    double top = shell.high().z();
    Area left = new Area(all.left(), all.left() + t, all.front(), all.rear());
    Area right = new Area(all.right() - t, all.right(), all.front(), all.rear());
    Area rear = new Area(left.right(), right.left(), all.rear() - t, all.rear());
    panel(draft, "case-left", left.between(t, top - t), Axis.X, false);
    panel(draft, "case-right", right.between(t, top - t), Axis.X, true);
    panel(draft, "case-rear", rear.between(t, top - t), Axis.Y, true);
    draft.panel(id("case-top"), plan.sheet(), all.between(top - t, top), Axis.Z, true, Axis.X);
    draft.panel(id("case-floor"), plan.sheet(), all.between(0, t), Axis.Z, true, Axis.X);
  }

  /** Half of a slide on the bay's side, half of it on the box's. */
  private void placeSlides(Draft draft) {
    double half = plan.slide() / 2;
    double far = t + plan.depth();
    double middle = plan.floorTop() + (DrawerPlan.ROUND_BOX + plan.height() - plan.floorTop()) / 2;
    double high = Math.min(DrawerPlan.SLIDE_HIGH, plan.height() - DrawerPlan.ROUND_BOX) / 2;
    double[] across = {0, plan.beside() - half, bay.width() - half, bay.width() - plan.beside()};
    List<String> parts = List.of("slide-1-stays", "slide-1-runs", "slide-2-stays", "slide-2-runs");
    for (int i = 0; i < 4; i++) {
      draft.box(
          PartKind.HARDWARE,
          id(parts.get(i)),
          bay.box(t, far, across[i], across[i] + half, middle - high, middle + high),
          SLIDE_MASS * plan.depth());
    }
    for (int side = 1; side <= 2; side++) {
      draft.touch(id("slide-" + side + "-stays"), id("slide-" + side + "-runs"));
      draft.touch(id("slide-" + side + "-runs"), id(SIDES.get(side - 1)));
    }
  }

  private List<String> moving() {
    List<String> all = new ArrayList<>(List.of(id("slide-1-runs"), id("slide-2-runs")));
    for (String part : List.of(SIDES.get(0), SIDES.get(1), INNER, REAR, FLOOR, FRONT)) {
      all.add(id(part));
    }
    plan.wish().contents().stream().map(Content::id).map(this::id).forEach(all::add);
    return all;
  }

  private void tellSteps(Draft draft) {
    if (plan.shell().isPresent()) {
      draft.step(
          CASE.stream().map(this::id).toList(),
          "build the case on a flat floor; compare its diagonals",
          new Vec(0, 0, -1),
          List.of());
    }
    draft.step(
        List.of(id("slide-1-stays"), id("slide-2-stays")),
        "screw the slides to the bay's sides, level with each other",
        bay.direction().scale(-1),
        List.of("mark both from the same edge with one spacer"));
    List<String> box = new ArrayList<>(moving());
    box.removeIf(part -> plan.wish().contents().stream().anyMatch(c -> id(c.id()).equals(part)));
    draft.step(
        box,
        "build the box, screw the slides' other halves to it, slide it in; the front comes last,"
            + " held by shims all round while you drive its screws from inside",
        bay.direction().scale(-1),
        List.of("shut it before you feed a board: an open drawer trips you"));
  }

  @Override
  public void cut(Draft draft) {
    if (bay.height() < GRIP_NEEDS || plan.height() < GRIP_NEEDS) {
      return;
    }
    double middle = bay.width() / 2;
    double top = Math.min(bay.height() - GRIP_BELOW, DrawerPlan.ROUND_BOX + plan.height() - 12);
    Box grip =
        bay.box(
            -1, 2 * t + 1, middle - GRIP_WIDE / 2, middle + GRIP_WIDE / 2, top - GRIP_HIGH, top);
    draft.change(id(FRONT), b -> b.cutBox(grip, "opening"));
    draft.change(id(INNER), b -> b.cutBox(grip, "opening"));
  }

  @Override
  public void join(Draft draft) {
    for (String side : SIDES) {
      draft.join(Joints.screwed(false), id(side), id(INNER));
      draft.join(Joints.screwed(false), id(side), id(REAR));
      draft.join(Joints.screwed(false), id(FLOOR), id(side));
    }
    draft.join(Joints.screwed(false), id(FLOOR), id(INNER));
    draft.join(Joints.screwed(false), id(FLOOR), id(REAR));
    draft.join(Joints.screwed(true), id(INNER), id(FRONT));
    if (plan.shell().isPresent()) {
      for (String side : List.of("case-left", "case-right")) {
        draft.join(Joints.screwed(false), id("case-top"), id(side));
        draft.join(Joints.screwed(false), id("case-floor"), id(side));
        draft.join(Joints.screwed(false), id(side), id("case-rear"));
      }
      draft.touch(id("case-top"), id("case-rear"));
      draft.touch(id("case-floor"), id("case-rear"));
    }
    List<String> walls = walls();
    draft.touch(id("slide-1-stays"), walls.get(0));
    draft.touch(id("slide-2-stays"), walls.get(1));
    screwSlides(draft, walls);
    List<Contact> contacts = new ArrayList<>();
    for (int side = 1; side <= 2; side++) {
      contacts.add(new Contact(id("slide-" + side + "-stays"), id("slide-" + side + "-runs")));
    }
    draft.mover(
        new Mover(
            id("opens"), moving(), new Slide(bay.direction(), 0, plan.travel(), 0), contacts));
  }

  /** Two short screws through each half of a slide, into the bay's side or the box's. */
  private void screwSlides(Draft draft, List<String> walls) {
    double half = plan.slide() / 2;
    Optional<Screw> found =
        draft
            .fixings()
            .shelf()
            .hingeScrew(half, t)
            .filter(s -> s.length() - half >= HOLD * s.gauge().shank());
    if (found.isEmpty()) {
      // Slides come with shorter ones, which nobody lists.
      return;
    }
    Screw screw = found.get();
    List<Fastener> screws = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      Vec outward = bay.across().unit().scale(side == 0 ? -1 : 1);
      for (boolean stays : new boolean[] {true, false}) {
        String slide = id("slide-" + (side + 1) + (stays ? "-stays" : "-runs"));
        String into = stays ? walls.get(side) : id(SIDES.get(side));
        Vec axis = stays ? outward : outward.scale(-1);
        Box box = draft.boxOf(slide);
        for (int i = 0; i < 2; i++) {
          // Those of the two halves lie apart, so that none is behind another.
          double share = (stays ? 0.2 : 0.35) + 0.45 * i;
          Vec size = box.size();
          Vec along = bay.along().unit().scale((share - 0.5) * size.along(bay.along()));
          Vec seat = box.centre().plus(along).minus(axis.scale(half / 2));
          screws.add(
              new Fastener(
                  slide + "/screw-" + (i + 1),
                  FastenerKind.WOOD_SCREW,
                  List.of(slide, into),
                  seat,
                  axis,
                  screw.length(),
                  screw.gauge().shank(),
                  screw.gauge().pilot(Wood.SOFT),
                  screw.head(),
                  false,
                  "slide"));
        }
      }
    }
    draft.fasten(screws);
  }

  /** The boards that the slides are screwed to. */
  private List<String> walls() {
    if (plan.shell().isPresent()) {
      return List.of(id("case-left"), id("case-right"));
    }
    String wing = "wing-" + plan.side().word() + "/";
    if (!bay.runsAlongY()) {
      return List.of(wing + "front", wing + "rear");
    }
    return plan.side() == Side.LEFT
        ? List.of(wing + "outer", wing + "inner")
        : List.of(wing + "inner", wing + "outer");
  }
}
