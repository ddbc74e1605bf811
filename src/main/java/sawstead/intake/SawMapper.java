package sawstead.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Blade;
import sawstead.brief.Cord;
import sawstead.brief.Feet;
import sawstead.brief.Footing;
import sawstead.brief.Knife;
import sawstead.brief.KnifeKind;
import sawstead.brief.MiterSlot;
import sawstead.brief.Protrusion;
import sawstead.brief.Saw;
import sawstead.brief.SawBottom;
import sawstead.brief.SawTable;
import sawstead.brief.Side;
import sawstead.brief.SlotKind;
import sawstead.brief.Spot;
import sawstead.brief.StopPlace;
import sawstead.brief.SwitchSpot;
import sawstead.brief.Throat;
import sawstead.brief.ThroatShape;
import sawstead.brief.Tilt;
import sawstead.brief.Trunnion;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

/**
 * Reads the {@code saw} section. What cannot be measured in a minute is filled with what is typical
 * (common practice, no source); what follows from other measurements is computed from them.
 */
final class SawMapper {

  /** The plate is at least so much thicker than its deepest slot, mm. */
  private static final double METAL_UNDER_SLOT = 6;

  private static final double USUAL_PLATE = 30;

  /** How far a riving knife reaches behind the blade, mm (common practice, no source). */
  private static final double KNIFE_BEYOND = 25;

  private final Section saw;
  private final SawLike like;

  SawMapper(Section saw) {
    this.saw = saw;
    this.like = saw.word("like", SawLike.class);
  }

  Saw saw() {
    List<MiterSlot> slots = slots();
    SawTable table = table(slots);
    Blade blade = blade();
    Feet feet = feet();
    SawBase base = new SawBase(saw, table, blade, feet);
    SawBottom bottom = saw.word("bottom", SawBottom.class, SawBottom.CLOSED);
    double height = table.height().nominal();
    Saw result =
        new Saw(
            saw.text("name").orElse("saw"),
            table,
            bottom,
            base.opening(bottom),
            base.body(),
            feet,
            base.bolts(),
            base.boltsMeasured(),
            blade,
            knife(blade),
            slots,
            throat(),
            new FenceMapper(saw.section("fence"), table, blade).fence(),
            new SawOutsideMapper(saw, height).dust(),
            behind(),
            cord(),
            switchSpot(blade),
            tilt(),
            new SawOutsideMapper(saw, height).wheel(),
            saw.measure("mass", like.mass, like.massBand),
            centre(feet.outline(), height));
    new SawCheck(saw, result).check();
    return result;
  }

  private SawTable table(List<MiterSlot> slots) {
    Section table = saw.section("table");
    Section heights = table.section("heights");
    Measured height = table.measure("height");
    double deepest = slots.stream().mapToDouble(s -> s.depth().high()).max().orElse(0);
    return new SawTable(
        table.measure("width"),
        table.measure("depth"),
        height,
        heights.measure("frontLeft", height.nominal()),
        heights.measure("frontRight", height.nominal()),
        heights.measure("rearLeft", height.nominal()),
        heights.measure("rearRight", height.nominal()),
        heights.measure("centre", height.nominal()),
        table.measure("thickness", Math.max(USUAL_PLATE, deepest + METAL_UNDER_SLOT)));
  }

  private Blade blade() {
    Section blade = saw.section("blade");
    return new Blade(
        blade.measure("leftEdge"),
        blade.measure("arbor"),
        blade.measure("diameter"),
        blade.measure("height", like.bladeHeight),
        blade.measure("plate"),
        blade.measure("kerf"));
  }

  private Optional<Knife> knife(Blade blade) {
    Section knife = saw.section("knife");
    if (!saw.has("knife") || saw.is("knife", "none")) {
      return Optional.empty();
    }
    return Optional.of(
        new Knife(
            knife.word("kind", KnifeKind.class),
            knife.measure("thickness"),
            knife.measure("belowCrown"),
            knife.measure("reach", blade.diameter().nominal() / 2 + KNIFE_BEYOND)));
  }

  private Feet feet() {
    Section feet = saw.section("feet");
    return new Feet(
        footing(feet), feet.measure("pad"), feet.measure("rise"), feet.measure("settling"));
  }

  private List<MiterSlot> slots() {
    List<MiterSlot> slots = new ArrayList<>();
    for (Section slot : saw.sections("slots")) {
      SlotKind kind = slot.word("kind", SlotKind.class);
      Measured width = slot.measure("width");
      boolean t = kind == SlotKind.T;
      slots.add(
          new MiterSlot(
              slot.measure("at"),
              width,
              slot.measure("depth"),
              kind,
              t
                  ? slot.measure("footWidth", Math.max(24.5, width.nominal()))
                  : slot.measure("footWidth", width.nominal(), width.plus()),
              t ? slot.measure("footHeight", 3.2) : slot.measure("footHeight", 0, 0)));
    }
    slots.sort(Comparator.comparingDouble(slot -> slot.at().nominal()));
    return slots;
  }

  private Throat throat() {
    Section throat = saw.section("throat");
    return new Throat(
        throat.measure("x"),
        throat.measure("length", like.throatLength),
        throat.measure("width"),
        throat.measure("ledge"),
        throat.measure("radius"),
        throat.measure("ledgeWidth"),
        throat.word("shape", ThroatShape.class),
        throat.measure("taperAcross"),
        throat.measure("taperAlong"));
  }

  private List<Protrusion> behind() {
    if (!saw.has("behind") && like == SawLike.CONTRACTOR) {
      return List.of(typicalMotor());
    }
    Duplicates ids = new Duplicates();
    List<Protrusion> behind = new ArrayList<>();
    for (Section thing : saw.sections("behind")) {
      behind.add(
          new Protrusion(
              ids.fresh(thing, "id"),
              thing.measure("left"),
              thing.measure("right"),
              thing.measure("out"),
              thing.measure("top"),
              thing.measure("bottom"),
              thing.flag("swings")));
    }
    return behind;
  }

  /** The motor of a belt drive hangs 250 to 350 mm behind (trade notes, no source). */
  private Protrusion typicalMotor() {
    String path = saw.pathOf("behind");
    return new Protrusion(
        "motor",
        Measured.plusMinus(path + "[0].left", -160, 40, Origin.DEFAULT),
        Measured.plusMinus(path + "[0].right", 180, 40, Origin.DEFAULT),
        Measured.plusMinus(path + "[0].out", 300, 50, Origin.DEFAULT),
        Measured.plusMinus(path + "[0].top", 130, 40, Origin.DEFAULT),
        Measured.plusMinus(path + "[0].bottom", 330, 40, Origin.DEFAULT),
        true);
  }

  private Cord cord() {
    Section cord = saw.section("cord");
    return new Cord(cord.word("side", Side.class), cord.measure("plug"), cord.measure("length"));
  }

  private SwitchSpot switchSpot(Blade blade) {
    Section spot = saw.section("switch");
    return new SwitchSpot(
        spot.measure("x", -0.6 * blade.leftEdge().nominal()),
        spot.measure("below"),
        spot.measure("out"),
        spot.word("stop", StopPlace.class),
        spot.measure("stopOut"),
        spot.measure("stroke"));
  }

  private static Footing footing(Section area) {
    return new Footing(
        area.measure("left"), area.measure("right"), area.measure("front"), area.measure("rear"));
  }

  private Tilt tilt() {
    Section tilt = saw.section("tilt");
    Optional<Trunnion> trunnion = Optional.empty();
    if (tilt.has("trunnion")) {
      Section swings = tilt.section("trunnion");
      trunnion = Optional.of(new Trunnion(footing(swings), swings.measure("bottom")));
    }
    return new Tilt(tilt.word("side", Side.class), tilt.measure("degrees"), trunnion);
  }

  private Spot centre(Footing feet, double height) {
    Section centre = saw.section("centre");
    return new Spot(
        centre.measure("x", (feet.right().nominal() - feet.left().nominal()) / 2),
        centre.measure("y", (feet.front().nominal() + feet.rear().nominal()) / 2),
        centre.measure("below", 0.45 * height));
  }
}
