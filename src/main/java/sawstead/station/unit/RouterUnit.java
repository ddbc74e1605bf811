package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.brief.RouterTable;
import sawstead.joinery.Board;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Bore;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Recess;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Remark;
import sawstead.station.SawPlace;
import sawstead.station.Setting;
import sawstead.station.Unit;

/**
 * A router in a wing: an opening with a ledge for its plate, base and motor below, which go up and
 * down through all heights, and a facing with a notch for the bit that is clamped to the saw's
 * fence. The facing is kept beside the station.
 */
final class RouterUnit implements Unit {
  static final String MOTOR = "router/motor";
  static final String HEIGHT = "router/height";

  private static final String PLATE = "router/plate";
  private static final String BASE = "router/base";
  private static final String BIT = "router/bit";
  private static final String FACING = "router/facing";
  private static final List<String> RIBS = List.of("router/rib-1", "router/rib-2");

  /** How far from the bit the fence works, from the nearest place on. */
  private static final double WORKS = 80;

  /** Room for inserts between the station and the facing. */
  private static final double BESIDE_INSERTS = 150;

  /** What doubles may be off by. */
  private static final double ROUNDING = 1e-6;

  /** Shares of the router's mass (common practice, no source). */
  private static final double BASE_SHARE = 0.25;

  private static final double PLATE_SHARE = 0.15;

  private final RouterPlan plan;
  private final RouterTable wish;

  RouterUnit(RouterPlan plan) {
    this.plan = plan;
    wish = plan.wish();
  }

  @Override
  public void place(Draft draft) {
    double mass = wish.body().mass().nominal();
    Area plate = plan.plate(0);
    Outline outline =
        Outline.rectangle(0, 0, plate.width(), plate.depth())
            .rounded(wish.plate().radius().nominal());
    double hole = wish.bit().nominal() + RouterPlan.ROUND_BIT;
    Panel solid =
        new Panel(
            outline,
            wish.plate().thickness().nominal(),
            List.of(Bore.through(plate.width() / 2, plate.depth() / 2, hole)));
    draft.body(
        PartKind.HARDWARE,
        PLATE,
        solid,
        Placement.at(new Vec(plate.left(), plate.front(), plan.plateUnder())),
        mass * PLATE_SHARE);
    double motor = wish.body().motor().nominal();
    draft.body(
        PartKind.HARDWARE,
        BASE,
        new Panel(
            Outline.circle(0, 0, wish.body().base().nominal()),
            wish.body().baseHeight().nominal(),
            List.of(Bore.through(0, 0, motor + 2 * RouterPlan.ROUND_MOTOR))),
        at(plan.baseLow()),
        mass * BASE_SHARE);
    draft.body(
        PartKind.HARDWARE,
        MOTOR,
        Solids.cylinder(motor, wish.body().motorLength().nominal()),
        at(plan.motorLow()),
        mass * (1 - BASE_SHARE - PLATE_SHARE));
    draft.body(
        PartKind.HARDWARE,
        BIT,
        Solids.cylinder(wish.bit().nominal(), plan.bitTop() - plan.motorTop()),
        at(plan.motorTop()),
        0);
    draft.touch(PLATE, BASE);
    draft.touch(MOTOR, BIT);
    draft.touch(PLATE, plan.wingId("top"));
    placeFacing(draft);
    placeRibs(draft);
    draft.step(
        List.of(PLATE, BASE, MOTOR, BIT),
        "screw the router to its plate and lower both into the opening; level the plate with its"
            + " screws",
        new Vec(0, 0, -1),
        List.of(
            "unplug saw and router before you reach under the wing",
            "saw's blade down and saw unplugged whenever the router runs"));
    tellRoom(draft);
  }

  private void placeRibs(Draft draft) {
    double under = plan.wing().surface() - plan.wing().sheet().thickness().nominal();
    boolean deep = plan.ribsRunDeep();
    for (int i = 0; i < 2 && plan.ribHeight() > 0; i++) {
      draft.panel(
          RIBS.get(i),
          plan.wing().sheet(),
          plan.ribs().get(i).between(under - plan.ribHeight(), under),
          deep ? Axis.X : Axis.Y,
          i == 1,
          deep ? Axis.Y : Axis.X);
    }
    if (plan.ribHeight() > 0) {
      draft.step(
          RIBS,
          "glue and screw the ribs under the wing's top, beside the opening",
          new Vec(0, 0, 1),
          List.of());
    }
  }

  private Placement at(double z) {
    return Placement.at(new Vec(plan.x(), plan.y(), z));
  }

  private void placeFacing(Draft draft) {
    double t = plan.facingThickness();
    Area kept =
        new Beside(plan.site().brief(), SawPlace.of(plan.site()))
            .of(t, -plan.facingLength() - 2 * t, plan.facingLength(), BESIDE_INSERTS);
    draft.panel(
        FACING,
        plan.facingSheet(),
        kept.between(0, plan.facingHeight()),
        Axis.X,
        plan.isRight(),
        Axis.Y);
    draft.step(
        List.of(FACING),
        "clamp it to the side of the saw's fence that looks to the bit when you rout",
        new Vec(0, 0, -1),
        List.of("feed against the bit's turn; never between bit and fence"));
  }

  private void tellRoom(Draft draft) {
    double[] missing = plan.missing();
    double most = Math.max(missing[0], missing[1]);
    if (most > ROUNDING) {
      draft.remark(
          Remark.Weight.STOP,
          "router-room",
          List.of(PLATE, plan.wingId("top")),
          "%s of the wing's top is missing beside the router's plate, which needs %s all round"
              .formatted(draft.length(most), draft.length(RouterPlan.STRIP)),
          "make the wing %s %s, or set the bit in its middle"
              .formatted(
                  draft.length(Math.ceil(most * 10) / 10),
                  missing[0] >= missing[1] ? "wider" : "deeper"));
    }
    draft.remark(
        Remark.Weight.NOTE,
        "router-dust",
        List.of(FACING),
        plan.site()
            .brief()
            .vac()
            .map(
                v ->
                    "chips fly at the bit: the vac's hose, %s wide, belongs behind the facing's notch"
                        .formatted(draft.length(v.hose().diameter().nominal())))
            .orElse("chips fly at the bit, and no vac is there to catch them"),
        "strap it to the fence before you rout, and wear a mask: fine dust gets past it");
  }

  @Override
  public void cut(Draft draft) {
    Board top = draft.board(plan.wingId("top"));
    Vec middle = top.local(new Vec(plan.x(), plan.y(), plan.plateUnder()));
    double radius = wish.plate().radius().nominal();
    double ledge = wish.ledge().nominal();
    draft.cut(
        top.id(),
        new Recess(
            "rabbet",
            outline(plan.plate(RouterPlan.FIT), middle).rounded(radius),
            wish.plate().thickness().nominal(),
            Face.FRONT));
    Outline inner = outline(plan.plate(RouterPlan.FIT - ledge), middle);
    draft.cut(top.id(), new Opening(radius > ledge ? inner.rounded(radius - ledge) : inner));
    if (plan.hangsThrough()) {
      double half = plan.throughHole() / 2;
      Area hole = new Area(plan.x() - half, plan.x() + half, plan.y() - half, plan.y() + half);
      draft.change(
          plan.wingId("bottom"),
          b -> b.cutBox(hole.between(plan.wing().bottom(), plan.plateUnder()), "opening"));
    }
    cutNotch(draft);
  }

  /** A rectangle of the floor plan in the top's own frame; its grain runs along y. */
  private static Outline outline(Area area, Vec middle) {
    double halfU = area.depth() / 2;
    double halfV = area.width() / 2;
    return Outline.rectangle(
        middle.x() - halfU, middle.y() - halfV, middle.x() + halfU, middle.y() + halfV);
  }

  private void cutNotch(Draft draft) {
    Box facing = draft.board(FACING).box();
    double middle = facing.low().y() + plan.y() - plan.facingFront();
    double half = plan.notchWidth() / 2;
    Box notch =
        new Box(
            new Vec(facing.low().x() - 1, middle - half, -1),
            new Vec(facing.high().x() + 1, middle + half, plan.notchHeight()));
    draft.change(FACING, b -> b.cutBox(notch, "opening"));
  }

  @Override
  public void join(Draft draft) {
    List<String> uprights =
        (plan.ribsRunDeep() ? Stream.of("front", "rear") : Stream.of("inner", "outer"))
            .map(plan::wingId)
            .toList();
    for (String rib : RIBS.stream().filter(draft::hasBoard).toList()) {
      draft.join(Joints.screwed(false), plan.wingId("top"), rib);
      for (String upright : uprights) {
        draft.joinWhereRoom(Joints.screwed(false), upright, rib, List.of());
      }
    }
    draft.mover(
        new Mover(
            HEIGHT,
            List.of(MOTOR, BIT),
            new Slide(new Vec(0, 0, 1), 0, wish.body().lift().nominal(), 0),
            List.of()));
    tellFence(draft);
  }

  /** The fence with its facing, from beside the greatest bit toward the blade, the bit up. */
  private void tellFence(Draft draft) {
    double width = plan.site().saw().fence().width().nominal();
    double end = Math.min(plan.farthest(), plan.nearestToBit());
    double begin = Math.max(width + SawUnit.PARKED / 2, end - WORKS);
    if (end <= begin) {
      return;
    }
    Box fence = draft.boxOf("saw/fence");
    // The parameter is the distance from the blade to the fence's face at the bit.
    double sign = plan.isRight() ? 1 : -1;
    double rest = plan.isRight() ? fence.high().x() : -fence.low().x();
    List<String> slider = Stream.of("saw/fence", "saw/fence-clamp").filter(draft::hasBody).toList();
    List<Contact> contacts = new ArrayList<>();
    Stream.concat(slider.stream(), Stream.of(FACING + "-on"))
        .forEach(
            one ->
                Stream.of("saw/table", "saw/rail-front", "saw/rail-rear")
                    .forEach(on -> contacts.add(new Contact(one, on))));
    draft.mover(
        new Mover(
            "router/fence-works",
            slider,
            new Slide(new Vec(sign, 0, 0), begin, end, rest),
            contacts,
            Setting.meanwhile(Map.of(HEIGHT, wish.body().lift().nominal()))
                .without(List.of("saw/blade", "saw/guard"))
                .with(List.of(facingOn(draft, sign * rest)))));
  }

  /** The facing on the fence, which the fence rests with its face at that x. */
  private Part facingOn(Draft draft, double face) {
    Board kept = draft.board(FACING);
    Box box = kept.box();
    double x = plan.isRight() ? face - box.low().x() : face - box.high().x();
    Vec by = new Vec(x, plan.facingFront() - box.low().y(), plan.facingLow() - box.low().z());
    return new Part(
        PartKind.PANEL,
        Optional.of(kept.stock()),
        kept.mass(),
        new Body(FACING + "-on", kept.panel(), kept.placement().moved(by)));
  }
}
