package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sawstead.brief.JointKind;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Side;
import sawstead.brief.StorageWish;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Corner;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Draft;
import sawstead.station.PartKind;
import sawstead.station.Remark;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * A rack at the stand's side, under the wing: a slot for each blade, a bay for the miter gauge, a
 * shelf for push sticks whose grips stand out toward the operator.
 */
final class StorageUnit implements Unit {
  private static final String HANGER = "storage/hanger";
  private static final String OUTER = "storage/outer";
  private static final String FLOOR = "storage/floor";
  private static final String TOP = "storage/top";
  private static final String REAR = "storage/rear";
  private static final String SHELF = "storage/shelf";

  /** Steel of a blade, kg per cubic mm of its disc as wide as its teeth (no source). */
  private static final double BLADE = 5e-6;

  private static final double GAUGE_MASS = 1.2;
  private static final double STICK_MASS = 0.2;

  /** What doubles may be off by. */
  private static final double ROUNDING = 1e-6;

  private final StoragePlan plan;
  private final StorageWish wish;
  private final Optional<Site> site;
  private final double t;

  StorageUnit(StoragePlan plan, Optional<Site> site) {
    this.plan = plan;
    this.site = site;
    wish = plan.wish();
    t = plan.t();
  }

  private boolean hasBay() {
    return plan.wide() > 0;
  }

  /** Between the bay and the first slot, where there are both, and between slots. */
  private List<String> dividers() {
    int count = plan.blades().size() - (hasBay() ? 0 : 1);
    return IntStream.rangeClosed(1, count).mapToObj(i -> "storage/divider-" + i).toList();
  }

  @Override
  public void place(Draft draft) {
    double w = plan.width();
    double d = plan.depth();
    double h = plan.height();
    upright(draft, HANGER, plan.box(0, t, 0, plan.hanger(), 0, h), !plan.right());
    upright(draft, OUTER, plan.box(w - t, w, 0, d, 0, h), plan.right());
    flat(draft, FLOOR, plan.box(t, w - t, 0, d - t, 0, t));
    flat(draft, TOP, plan.box(t, w - t, 0, d - t, h - t, h));
    draft.panel(REAR, plan.sheet(), plan.box(t, w - t, d - t, d, 0, h), Axis.Y, true, Axis.Z);
    List<String> dividers = dividers();
    for (int i = 0; i < dividers.size(); i++) {
      double at = plan.slotAt(hasBay() ? i : i + 1) - t;
      upright(draft, dividers.get(i), plan.box(at, at + t, 0, d - t, t, h - t), plan.right());
    }
    if (plan.hasShelf()) {
      double up = t + plan.shelfUnder();
      flat(draft, SHELF, plan.box(t, t + plan.wide(), 0, d - t, up, up + t));
    }
    tellSteps(draft);
    keepBlades(draft);
    wish.gauge().ifPresent(gauge -> keepGauge(draft, gauge));
    keepSticks(draft);
    tellRoom(draft);
  }

  private void upright(Draft draft, String id, Box box, boolean towardsPlus) {
    draft.panel(id, plan.sheet(), box, Axis.X, towardsPlus, Axis.Y);
  }

  private void flat(Draft draft, String id, Box box) {
    draft.panel(id, plan.sheet(), box, Axis.Z, true, Axis.Y);
  }

  private void tellSteps(Draft draft) {
    List<String> parts = new ArrayList<>(List.of(HANGER, FLOOR));
    parts.addAll(dividers());
    parts.addAll(List.of(TOP, REAR));
    if (plan.hasShelf()) {
      parts.add(SHELF);
    }
    parts.add(OUTER);
    draft.step(
        parts,
        site.isPresent()
            ? "build the rack, then hold it to the legs and screw it on from inside the stand"
            : "build the rack on a flat floor",
        new Vec(plan.right() ? -1 : 1, 0, 0),
        List.of("a blade lies in its slot with its teeth free: never stack blades on each other"));
  }

  private void keepBlades(Draft draft) {
    for (int i = 0; i < plan.blades().size(); i++) {
      OwnedBlade blade = plan.blades().get(i);
      if (plan.mounted().filter(blade::equals).isPresent()) {
        continue;
      }
      double diameter = blade.diameter().nominal();
      double kerf = blade.kerf().nominal();
      double x = plan.x(plan.slotAt(i) + plan.slot(blade) / 2) - kerf / 2;
      double y = plan.front() + StoragePlan.ROUND + diameter / 2;
      double z = plan.low() + t + diameter / 2 + StoragePlan.OFF_FLOOR;
      Panel disc = new Panel(Outline.circle(0, 0, diameter), kerf);
      draft.body(
          PartKind.ENVELOPE,
          "storage/blade-" + blade.id(),
          disc,
          Placement.of(new Vec(x, y, z), new Vec(0, 1, 0), new Vec(0, 0, 1)),
          disc.volumeExact() * BLADE);
      room(draft, "storage/blade-" + blade.id(), diameter + StoragePlan.ROUND, diameter);
    }
  }

  private void keepGauge(Draft draft, StorageWish.GaugeSize gauge) {
    double half = gauge.width().nominal() / 2;
    double bar = gauge.bar().nominal() / 2;
    double head = gauge.depth().nominal();
    double length = Math.max(gauge.length().nominal(), head + 1);
    Outline outline =
        bar < half
            ? Outline.polygon(
                List.of(
                    Corner.of(-half, 0),
                    Corner.of(half, 0),
                    Corner.of(half, head),
                    Corner.of(bar, head),
                    Corner.of(bar, length),
                    Corner.of(-bar, length),
                    Corner.of(-bar, head),
                    Corner.of(-half, head)))
            : Outline.rectangle(-half, 0, half, length);
    double across = t + StoragePlan.ROUND + half;
    draft.body(
        PartKind.ENVELOPE,
        "storage/gauge",
        new Panel(outline, gauge.height().nominal()),
        Placement.at(new Vec(plan.x(across), plan.front(), plan.low() + t)),
        GAUGE_MASS);
    room(draft, "storage/gauge", length, gauge.height().nominal());
  }

  private void keepSticks(Draft draft) {
    double thick = wish.stickThickness().nominal();
    double length = wish.stickLength().nominal();
    double high = wish.stickHeight().nominal();
    double on = t + plan.sticksOn();
    for (int i = 0; i < wish.sticks(); i++) {
      double at = plan.stickAt(i);
      String id = "storage/push-stick-" + (i + 1);
      draft.envelope(
          id,
          plan.box(at, at + thick, -StoragePlan.GRIP, length - StoragePlan.GRIP, on, on + high),
          STICK_MASS);
      room(draft, id, length - StoragePlan.GRIP, plan.sticksOn() + high);
    }
  }

  /** Whether a thing fits into the rack: how far it reaches in, and how high above the floor. */
  private void room(Draft draft, String id, double deep, double high) {
    double lacksDepth = deep - (plan.depth() - t);
    double lacksHeight = high - (plan.height() - 2 * t);
    double most = Math.max(lacksDepth, lacksHeight);
    if (most > ROUNDING) {
      draft.remark(
          Remark.Weight.STOP,
          "storage-room",
          List.of(id),
          "%s is %s too %s for the rack"
              .formatted(id, draft.length(most), lacksDepth >= lacksHeight ? "long" : "high"),
          "make the rack that much %s (storage.%s), or leave the size out"
              .formatted(
                  lacksDepth >= lacksHeight ? "deeper" : "higher",
                  lacksDepth >= lacksHeight ? "depth" : "height"));
    }
  }

  private void tellRoom(Draft draft) {
    if (site.isEmpty()) {
      return;
    }
    double base = site.get().levels().baseTop();
    if (plan.low() < base) {
      draft.remark(
          Remark.Weight.STOP,
          "storage-low",
          List.of(FLOOR),
          "the rack hangs %s below the stand's base".formatted(draft.length(base - plan.low())),
          "keep less in it (storage), or make the wing above it lower in height"
              + " (station.wings.*.height)");
    }
  }

  @Override
  public void join(Draft draft) {
    for (String part : List.of(TOP, FLOOR, REAR)) {
      draft.join(Joints.screwed(false), HANGER, part);
      draft.join(Joints.screwed(false), OUTER, part);
    }
    draft.join(Joints.screwed(false), REAR, TOP);
    draft.join(Joints.screwed(false), REAR, FLOOR);
    List<String> dividers = dividers();
    for (String divider : dividers) {
      draft.join(Joints.screwed(false), TOP, divider);
      draft.join(Joints.screwed(false), FLOOR, divider);
      draft.touch(divider, REAR);
    }
    if (plan.hasShelf()) {
      draft.join(Joints.screwed(false), HANGER, SHELF);
      draft.join(Joints.screwed(false), REAR, SHELF);
      if (dividers.isEmpty()) {
        draft.join(Joints.screwed(false), OUTER, SHELF);
      } else {
        // No drill goes into a blade's slot, so the shelf is let in on that side.
        draft.join(new Joints(JointKind.DADO).corner(false), dividers.get(0), SHELF);
      }
    }
    site.ifPresent(s -> hang(draft));
  }

  private void hang(Draft draft) {
    List<String> legs =
        plan.right()
            ? List.of(StandUnit.side(2), StandUnit.side(3))
            : List.of(StandUnit.side(1), StandUnit.side(4));
    Side side = plan.right() ? Side.RIGHT : Side.LEFT;
    // From inside the stand no drill comes to a screw beside a stretcher.
    List<Box> inTheWay =
        Stream.of(StandUnit.stretcher(side, true), StandUnit.stretcher(side, false))
            .filter(draft::hasBoard)
            .map(id -> draft.board(id).box().grown(Joints.DRIVER))
            .toList();
    int held = 0;
    for (String leg : legs) {
      held += draft.joinWhereRoom(Joints.screwed(true), leg, HANGER, inTheWay).fasteners().size();
    }
    if (held < 2) {
      draft.remark(
          Remark.Weight.STOP,
          "storage-unsupported",
          List.of(HANGER),
          "the rack finds room for %d screw(s) into the stand's legs".formatted(held),
          "make it higher (storage.height), or hang it at the other side");
    }
  }
}
