package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.DustPort;
import sawstead.brief.Fence;
import sawstead.brief.HandWheel;
import sawstead.brief.Knife;
import sawstead.brief.MiterSlot;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Protrusion;
import sawstead.brief.Rail;
import sawstead.brief.Saw;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Recess;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Gauge;
import sawstead.station.PartKind;
import sawstead.station.SawPlace;
import sawstead.station.Unit;

/**
 * The saw as it was measured, standing on the stand's top: table with slots and throat, body, feet,
 * rails, fence with clamp, blade and guard, dust port, what hangs out behind, hand-wheel and
 * switch. Its parts touch but do not overlap when the measurements agree with each other.
 */
final class SawUnit implements Unit {

  /** Where the fence is parked: its face to the right of the blade, mm, travel permitting. */
  static final double PARKED = 150;

  /**
   * Air between blade and guard, thickness and width of the guard, mm (common practice, no source).
   */
  private static final double GUARD_GAP = 8;

  private static final double GUARD_THICKNESS = 20;
  private static final double GUARD_WIDTH = 30;

  /** Air between blade and riving knife, and behind it in the throat, mm (REF-SAF-04: 3 to 8). */
  private static final double KNIFE_AIR = 5;

  /** Width and height of a switch's plate, mm (common practice, no source). */
  static final double SWITCH = 60;

  private final Saw saw;
  private final Area table;
  private final Area body;
  private final double feet;
  private final double top;
  private final double under;
  private final boolean carried;

  /**
   * @param place where it stands
   * @param carried whether on a station, to which it is bolted
   */
  SawUnit(SawPlace place, boolean carried) {
    saw = place.saw();
    table = place.table();
    body = place.body();
    feet = place.feet();
    top = place.top();
    under = top - mm(saw.table().thickness());
    this.carried = carried;
  }

  @Override
  public void place(Draft draft) {
    placeTable(draft);
    double rise = mm(saw.feet().rise());
    draft.envelope("saw/body", body.between(feet + rise, under), mm(saw.mass()));
    if (rise > 0) {
      placeFeet(draft, rise);
    }
    placeFence(draft);
    placeBlade(draft);
    saw.knife().ifPresent(knife -> placeKnife(draft, knife));
    saw.dust().ifPresent(port -> placeDustPort(draft, port));
    for (Protrusion p : saw.behind()) {
      double front = mm(p.top()) >= mm(saw.table().thickness()) ? body.rear() : table.rear();
      Area area = new Area(mm(p.left()), mm(p.right()), front, table.rear() + mm(p.out()));
      draft.envelope("saw/" + p.id(), area.between(top - mm(p.bottom()), top - mm(p.top())), 0);
    }
    placeWheel(draft, saw.wheel());
    double x = mm(saw.switchSpot().x());
    double z = top - mm(saw.switchSpot().below());
    draft.envelope(
        "saw/switch",
        new Box(
            new Vec(x - SWITCH / 2, body.front() - mm(saw.switchSpot().out()), z - SWITCH / 2),
            new Vec(x + SWITCH / 2, body.front(), z + SWITCH / 2)),
        0);
    draft.step(
        List.of("saw/table", "saw/body"),
        carried
            ? "lift the saw on with a helper and bolt it down"
            : "stand the saw where it cannot walk or tip, and unplug it",
        new Vec(0, 0, -1),
        List.of(
            "unplug the saw before you lift it; a saw that is not bolted down can walk or tip",
            "follow the saw's own manual for lifting points"));
  }

  private void placeTable(Draft draft) {
    double thickness = top - under;
    List<Feature> features = new ArrayList<>();
    for (MiterSlot slot : saw.slots()) {
      double u = mm(slot.at()) - table.left();
      double half = mm(slot.width()) / 2;
      features.add(
          new Recess(
              "groove",
              Outline.rectangle(u - half, 0, u + half, table.depth()),
              mm(slot.depth()),
              Face.FRONT));
    }
    double u = mm(saw.throat().x()) - table.left();
    double v = mm(saw.blade().arbor());
    ThroatOutline throat = ThroatOutline.of(saw.throat());
    double ledge = mm(saw.throat().ledge());
    if (ledge < top - under) {
      features.add(new Recess("recess", throat.acrossU(0).moved(u, v), ledge, Face.FRONT));
      features.add(new Opening(throat.acrossU(throat.ledgeWidth()).moved(u, v)));
    } else {
      features.add(new Opening(throat.acrossU(0).moved(u, v)));
    }
    Panel panel =
        new Panel(Outline.rectangle(0, 0, table.width(), table.depth()), thickness, features);
    draft.body(
        PartKind.ENVELOPE,
        "saw/table",
        panel,
        Placement.at(new Vec(table.left(), table.front(), under)),
        0);
  }

  private void placeFeet(Draft draft, double rise) {
    double pad = mm(saw.feet().pad());
    Area outline =
        new Area(
            -mm(saw.feet().outline().left()),
            mm(saw.feet().outline().right()),
            mm(saw.feet().outline().front()),
            mm(saw.feet().outline().rear()));
    int n = 1;
    for (double y : new double[] {outline.front(), outline.rear() - pad}) {
      for (double x : new double[] {outline.left(), outline.right() - pad}) {
        draft.envelope(
            "saw/foot-" + n, new Area(x, x + pad, y, y + pad).between(feet, feet + rise), 0);
        n++;
      }
    }
  }

  private void placeFence(Draft draft) {
    Fence fence = saw.fence();
    double frontOut = fence.front().map(r -> mm(r.out())).orElse(0.0);
    double rearOut = fence.rear().map(r -> mm(r.out())).orElse(0.0);
    fence
        .front()
        .ifPresent(
            r ->
                draft.envelope(
                    "saw/rail-front", rail(r, table.front() - mm(r.out()), table.front()), 0));
    fence
        .rear()
        .ifPresent(
            r ->
                draft.envelope(
                    "saw/rail-rear", rail(r, table.rear(), table.rear() + mm(r.out())), 0));
    double face = Math.min(PARKED, mm(fence.right()));
    double width = mm(fence.width());
    draft.envelope(
        "saw/fence",
        new Area(face, face + width, table.front() - frontOut, table.rear() + rearOut)
            .between(top, top + mm(fence.height())),
        0);
    placeClamp(draft, fence, face, frontOut);
    new FenceTravel(fence, face).tell(draft);
  }

  private void placeClamp(Draft draft, Fence fence, double face, double frontOut) {
    double width = mm(fence.width());
    if (mm(fence.clampOut()) > 0 && mm(fence.clampBelow()) > 0) {
      double front = table.front() - frontOut;
      draft.envelope(
          "saw/fence-clamp",
          new Area(face, face + width, front - mm(fence.clampOut()), front)
              .between(top - mm(fence.clampBelow()), top),
          0);
    }
  }

  private Box rail(Rail rail, double front, double rear) {
    double z = top - mm(rail.below());
    return new Area(-mm(rail.left()), mm(rail.right()), front, rear)
        .between(z - mm(rail.height()), z);
  }

  /**
   * The knife in the throat, from below the table up to the guard's foot: there an insert meets it.
   * Above, it is inside the kerf wherever the blade has been. It ends before the throat does.
   */
  private void placeKnife(Draft draft, Knife knife) {
    double[] y = knifeAlong(saw, knife);
    if (y[1] > y[0]) {
      double half = mm(knife.thickness()) / 2;
      draft.envelope(
          "saw/knife", new Area(-half, half, y[0], y[1]).between(under, top + GUARD_GAP - 1), 0);
    }
  }

  /** Greatest height of a blade above the table, mm: a smaller one stands lower on its arbor. */
  static double crown(Gauge gauge, Saw saw, OwnedBlade blade) {
    double smaller = gauge.read(saw.blade().diameter()) - gauge.read(blade.diameter());
    return gauge.read(saw.blade().height()) - smaller / 2;
  }

  /** From where to where along y a knife stands in the throat, mm. */
  static double[] knifeAlong(Saw saw, Knife knife) {
    double radius = mm(saw.blade().diameter()) / 2;
    double arbor = mm(saw.blade().arbor());
    double front = arbor + halfChord(radius, mm(saw.blade().height()), 0) + KNIFE_AIR;
    ThroatOutline throat = ThroatOutline.of(saw.throat());
    double end = arbor + throat.length() / 2 - throat.ledgeWidth() - 1;
    return new double[] {front, Math.min(arbor + mm(knife.reach()), end)};
  }

  /**
   * What stands above the table: the blade's segment at its greatest height, and an arched guard
   * over it.
   */
  private void placeBlade(Draft draft) {
    double radius = mm(saw.blade().diameter()) / 2;
    double height = mm(saw.blade().height());
    double kerf = mm(saw.blade().kerf());
    double half = halfChord(radius, height, 0);
    Outline segment =
        Outline.polygon(List.of(new Corner(half, 0, height / half), new Corner(-half, 0, 0)));
    draft.body(
        PartKind.ENVELOPE,
        "saw/blade",
        new Panel(segment, kerf),
        Placement.of(
            new Vec(-kerf / 2, mm(saw.blade().arbor()), top), new Vec(0, 1, 0), new Vec(0, 0, 1)),
        0);
    double inner = radius + GUARD_GAP;
    double outer = inner + GUARD_THICKNESS;
    double foot = GUARD_GAP;
    double centre = height - radius;
    double in = halfChord(inner, centre + inner, foot);
    double out = halfChord(outer, centre + outer, foot);
    Outline arch =
        Outline.polygon(
            List.of(
                new Corner(out, foot, (centre + outer - foot) / out),
                new Corner(-out, foot, 0),
                new Corner(-in, foot, -(centre + inner - foot) / in),
                new Corner(in, foot, 0)));
    draft.body(
        PartKind.ENVELOPE,
        "saw/guard",
        new Panel(arch, GUARD_WIDTH),
        Placement.of(
            new Vec(-GUARD_WIDTH / 2, mm(saw.blade().arbor()), top),
            new Vec(0, 1, 0),
            new Vec(0, 0, 1)),
        0);
  }

  /**
   * Half the chord of a circle whose crown is {@code crown} high, at height {@code at}
   * (REF-TRD-08).
   */
  static double halfChord(double radius, double crown, double at) {
    double fromCentre = radius - crown + at;
    return Math.sqrt(Math.max(0, radius * radius - fromCentre * fromCentre));
  }

  private void placeDustPort(Draft draft, DustPort port) {
    double out = mm(port.out());
    double z = top - mm(port.below());
    double along = mm(port.x());
    Placement placement =
        switch (port.side()) {
          case REAR ->
              Placement.of(new Vec(along, body.rear(), z), new Vec(0, 0, 1), new Vec(1, 0, 0));
          case FRONT ->
              Placement.of(new Vec(along, body.front(), z), new Vec(1, 0, 0), new Vec(0, 0, 1));
          case LEFT ->
              Placement.of(new Vec(body.left(), along, z), new Vec(0, 0, 1), new Vec(0, 1, 0));
          case RIGHT ->
              Placement.of(new Vec(body.right(), along, z), new Vec(0, 1, 0), new Vec(0, 0, 1));
          case BELOW ->
              Placement.of(
                  new Vec(along, mm(port.below()), feet + mm(saw.feet().rise())),
                  new Vec(0, 1, 0),
                  new Vec(1, 0, 0));
        };
    draft.body(
        PartKind.ENVELOPE,
        "saw/dust-port",
        Solids.cylinder(mm(port.diameter()), out),
        placement,
        0);
  }

  private void placeWheel(Draft draft, HandWheel wheel) {
    double z = top - mm(wheel.below());
    double at = mm(wheel.at());
    Placement placement =
        switch (wheel.side()) {
          case LEFT ->
              Placement.of(new Vec(body.left(), at, z), new Vec(0, 0, 1), new Vec(0, 1, 0));
          case RIGHT ->
              Placement.of(new Vec(body.right(), at, z), new Vec(0, 1, 0), new Vec(0, 0, 1));
          default -> Placement.of(new Vec(at, body.front(), z), new Vec(1, 0, 0), new Vec(0, 0, 1));
        };
    draft.body(
        PartKind.ENVELOPE,
        "saw/hand-wheel",
        Solids.cylinder(mm(wheel.diameter()), mm(wheel.out())),
        placement,
        0);
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }
}
