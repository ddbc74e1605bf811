package sawstead.station.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import sawstead.joinery.Fastener;
import sawstead.measure.LengthFormat;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Remark;
import sawstead.station.Setting;
import sawstead.station.Unit;

/**
 * A crosscut sled: base on runners, two-layer squaring fence on the operator's side with an exit
 * guard behind it, a bridge on the far side unless it is left out, a stop on a track, and stops
 * below the runners' tails that end the stroke. It is kept beside the station, and set on the table
 * for its stroke.
 */
final class SledUnit implements Unit {
  /** Screws keep so far from the kerf. */
  private static final double FROM_KERF = 30;

  /** Nearest that the stop comes to the blade. */
  private static final double STOP_NEAREST = 60;

  /** Air between the parked rip fence and the sled. */
  private static final double PARKED_AIR = 5;

  /** Density of an aluminium track with its slot, kg per cubic mm of its box (no source). */
  private static final double TRACK_DENSITY = 1.4e-6;

  /** Bending stiffness of plywood, N/mm2 (REF-PLY-11: 6960 to 8550). */
  private static final double BENDING = 7500;

  private final SledPlan plan;
  private final SledParts parts;
  private final Vec kept;
  private final SledClamp clamp;

  SledUnit(SledPlan plan) {
    this.plan = plan;
    parts = SledParts.of(plan);
    Area stored = plan.stored();
    kept = new Vec(stored.left() + plan.left(), stored.front(), plan.runnerHeight() + plan.base());
    clamp = new SledClamp(plan, kept);
  }

  private String id(String part) {
    return plan.id(part);
  }

  private Box keptAt(Box own) {
    return new Box(own.low().plus(kept), own.high().plus(kept));
  }

  private String track() {
    return id("track");
  }

  @Override
  public void place(Draft draft) {
    for (SledParts.Blank b : parts.blanks()) {
      draft.panel(
          id(b.part()), b.sheet(), keptAt(b.box()), b.through(), b.towardsPlus(), b.grain());
    }
    if (plan.isSmall()) {
      clamp.place(draft);
    } else {
      placeTrack(draft);
    }
    for (SledPlan.Runner runner : plan.runners()) {
      if (plan.runnerFrom(runner) + SledPlan.STOP_LENGTH > 0) {
        draft.touch(id(runner.part() + "-stop"), id(SledParts.BASE));
      }
    }
    tellStep(draft);
  }

  private void placeTrack(Draft draft) {
    double t = plan.base();
    double back = plan.face() - 2 * t;
    Area rail =
        new Area(
            -plan.left() + SledParts.SHORTER,
            plan.right() - SledParts.SHORTER,
            back,
            back + SledParts.TRACK_WIDTH);
    Box box = rail.between(plan.top(), plan.top() + SledParts.TRACK_HEIGHT);
    Vec size = box.size();
    draft.box(
        PartKind.HARDWARE, track(), keptAt(box), size.x() * size.y() * size.z() * TRACK_DENSITY);
    draft.touch(track(), id(SledParts.BACKING));
    draft.touch(track(), id(SledParts.FACE));
    draft.touch(track(), id(SledParts.STOP_ARM));
    draft.touch(id(SledParts.STOP_BLOCK), id(SledParts.FACE));
  }

  /** Ids of all that moves on the stroke. */
  private List<String> all() {
    List<String> all = new ArrayList<>(parts.blanks().stream().map(b -> id(b.part())).toList());
    if (plan.isSmall()) {
      all.addAll(clamp.ids());
    } else {
      all.add(track());
    }
    return all;
  }

  @Override
  public void cut(Draft draft) {
    double half = plan.kerf() / 2;
    double inside = plan.face() + plan.halfChord(plan.base() + plan.thickest());
    double from = inside - plan.halfChord(0);
    Box base = new Area(-half, half, from, plan.depth()).between(0, plan.base());
    draft.change(id(SledParts.BASE), b -> b.cutBox(keptAt(base), "opening"));
    Box upright =
        new Area(-half, half, plan.fenceBack(), plan.depth()).between(plan.base(), plan.crown());
    for (String part : List.of(SledParts.FACE, SledParts.BACKING, SledParts.BRIDGE)) {
      if (draft.hasBoard(id(part))) {
        draft.change(id(part), b -> b.cutBox(keptAt(upright), "opening"));
      }
    }
  }

  @Override
  public void join(Draft draft) {
    double x = Math.max(FROM_KERF, plan.kerf());
    List<Box> kerf =
        List.of(
            keptAt(new Area(-x, x, -1000, plan.depth() + 1000).between(-200, plan.top() + 100)));
    for (SledPlan.Runner runner : plan.runners()) {
      draft.join(Joints.screwed(false), id(runner.part()), id(SledParts.BASE), kerf);
      draft.join(Joints.screwed(false), id(runner.part()), id(runner.part() + "-stop"));
    }
    if (plan.brief().workshop().glue()) {
      // Glued over their whole faces in clamps: screws would only push the layers apart.
      draft.touch(id(SledParts.BACKING), id(SledParts.FACE));
    } else {
      draft.join(Joints.lap(), id(SledParts.BACKING), id(SledParts.FACE), kerf);
    }
    List<Fastener> fence =
        draft.join(Joints.screwed(true), id(SledParts.BASE), id(SledParts.FACE), kerf).fasteners();
    draft.touch(id(SledParts.BASE), id(SledParts.BACKING));
    for (String part : List.of(SledParts.GUARD_LEFT, SledParts.GUARD_RIGHT)) {
      draft.join(Joints.screwed(false), id(SledParts.BASE), id(part));
      draft.join(Joints.screwed(false), id(SledParts.GUARD_TOP), id(part));
      draft.touch(id(part), id(SledParts.GUARD_END));
    }
    draft.touch(id(SledParts.BASE), id(SledParts.GUARD_END));
    draft.touch(id(SledParts.GUARD_TOP), id(SledParts.GUARD_END));
    if (draft.hasBoard(id(SledParts.BRIDGE))) {
      draft.join(Joints.screwed(false), id(SledParts.BASE), id(SledParts.BRIDGE), kerf);
    }
    if (!plan.isSmall()) {
      draft.join(Joints.screwed(false), id(SledParts.STOP_ARM), id(SledParts.STOP_BLOCK));
    }
    tellSquaring(draft, fence);
    tellMotions(draft);
    tellRemarks(draft);
  }

  /** The outermost screws of the fence are its pivot and its squaring screw. */
  private void tellSquaring(Draft draft, List<Fastener> screws) {
    List<Fastener> along =
        screws.stream().sorted(Comparator.comparingDouble(f -> f.at().x())).toList();
    if (along.size() < 2) {
      draft.remark(
          Remark.Weight.MIND,
          "sled-pivot",
          List.of(id(SledParts.FACE)),
          "the fence found room for %d screws: it needs a pivot and a squaring screw"
              .formatted(along.size()),
          "make the base wider, or add screws that go through the base and hold in the fence");
      return;
    }
    Fastener first = along.get(0);
    Fastener last = along.get(along.size() - 1);
    boolean pivotRight = plan.stopSign() < 0;
    double apart = last.at().x() - first.at().x();
    draft.remark(
        Remark.Weight.NOTE,
        "sled-squaring",
        List.of((pivotRight ? last : first).id(), (pivotRight ? first : last).id()),
        String.format(
            Locale.ROOT,
            "the fence turns on its %s screw; the %s one, %s away, squares it",
            pivotRight ? "right" : "left",
            pivotRight ? "left" : "right",
            length(apart)),
        String.format(
            Locale.ROOT,
            "drive these two first, cut five sides, ask `square --pivot %s --screw '%s'`, then drive the rest",
            pivotRight ? "right" : "left",
            length(apart)));
  }

  /** A length as the user reads it. */
  private String length(double millimetres) {
    return LengthFormat.of(plan.brief().units()).withUnit(millimetres);
  }

  private void tellMotions(Draft draft) {
    List<String> all = all();
    List<Part> guests = plan.isSmall() ? clamp.guests() : boards();
    List<Contact> contacts = new ArrayList<>();
    Stream.concat(all.stream(), guests.stream().map(Part::id))
        .forEach(
            part ->
                Stream.of("saw/table", "saw/blade", "saw/rail-front")
                    .forEach(saw -> contacts.add(new Contact(part, saw))));
    draft.mover(
        new Mover(
            id("stroke"),
            all,
            new Slide(new Vec(0, 1, 0), plan.from(), plan.to(), 0),
            contacts,
            setting(draft).with(guests)));
    if (plan.isSmall()) {
      clamp.tellMotion(draft);
      return;
    }
    List<String> stop = List.of(id(SledParts.STOP_ARM), id(SledParts.STOP_BLOCK));
    draft.mover(
        new Mover(
            id("stop-slides"),
            stop,
            new Slide(
                new Vec(plan.stopSign(), 0, 0), STOP_NEAREST, plan.stopFarthest(), plan.stopRest()),
            List.of(
                new Contact(id(SledParts.STOP_ARM), track()),
                new Contact(id(SledParts.STOP_BLOCK), id(SledParts.FACE))),
            beforeACut(draft)));
  }

  /** The sled on the table at the beginning of its stroke: there its stop is set. */
  private Setting beforeACut(Draft draft) {
    Setting stroke = setting(draft);
    Map<String, Double> others = new TreeMap<>(stroke.others());
    others.put(id("stroke"), plan.from());
    return stroke.set(Placement.identity()).and(others);
  }

  /** On the table, with guard and fence out of the way. */
  private Setting setting(Draft draft) {
    List<String> aside = new ArrayList<>();
    if (!plan.wish().guardStays()) {
      aside.add("saw/guard");
    }
    boolean parks =
        plan.saw().fence().right().nominal() >= plan.right() + PARKED_AIR
            && draft.hasMover("saw/fence-travels");
    if (!parks) {
      Stream.of("saw/fence", "saw/fence-clamp").filter(draft::hasBody).forEach(aside::add);
    }
    Setting setting =
        Setting.aside(aside)
            .set(Placement.at(new Vec(-kept.x(), -kept.y(), plan.place().top() - kept.z())));
    return parks
        ? setting.and(Map.of("saw/fence-travels", plan.saw().fence().right().nominal()))
        : setting;
  }

  /** The widest and thickest board against fence and stop, in two halves beside the kerf. */
  private List<Part> boards() {
    double z = plan.place().top() + plan.base();
    double half = plan.kerf() / 2;
    double leftEnd = plan.stopSign() < 0 ? -plan.stopRest() : -0.75 * plan.left();
    double rightEnd = plan.stopSign() < 0 ? 0.75 * plan.right() : plan.stopRest();
    return List.of(board("board-left", leftEnd, -half, z), board("board-right", half, rightEnd, z));
  }

  private Part board(String name, double left, double right, double z) {
    Area area = new Area(left, right, plan.face(), plan.face() + plan.widest());
    return Part.box(PartKind.ENVELOPE, id(name), area.between(z, z + plan.thickest()), 0);
  }

  private void tellRemarks(Draft draft) {
    List<String> about = List.of(id(SledParts.BASE));
    draft.remark(
        Remark.Weight.NOTE,
        "sled-hands",
        about,
        "the sled displaces the overhead guard, and its blade comes out behind the fence",
        "keep hands 150 mm from the kerf and off the exit guard, hold the board against fence and"
            + " stop, never cut freehand; the guard goes back on afterwards, and a riving knife at"
            + " or below the crown stays on: the saw's manual rules");
    for (SledPlan.Runner runner : plan.runners()) {
      double below =
          plan.saw().slots().get(runner.slot() - 1).depth().nominal() - plan.runnerHeight();
      draft.remark(
          Remark.Weight.NOTE,
          "sled-shims",
          List.of(id(runner.part())),
          "the base rides on the table: %s is %s lower than its slot"
              .formatted(id(runner.part()), draft.length(below)),
          "for the glue-up lay shims of %s under it, so that it stands %s proud, and wax the slot"
              .formatted(
                  draft.length(below + plan.wish().proud().nominal()),
                  draft.length(plan.wish().proud().nominal())));
    }
    if (!plan.wish().bridge()) {
      double reach = plan.depth() - plan.face();
      // A cantilever with a load at its end, REF-MEC-02: P L^3 / (3 E I), I = b h^3 / 12.
      double width = Math.min(plan.left(), plan.right());
      double sag = 20 * Math.pow(reach, 3) / (3 * BENDING * width * Math.pow(plan.base(), 3) / 12);
      draft.remark(
          Remark.Weight.NOTE,
          "bridge-out",
          about,
          "without a bridge only fence and uncut edge hold the halves of the base together; lifted, the lighter one sags %s under 20 N at its far corner, but boards wider than %s may reach beyond the base"
              .formatted(draft.length(sag), length(plan.widest())),
          "lift it by the fence, and keep its far edge from knocks; add the bridge if you do not"
              + " need the width");
    }
  }

  private void tellStep(Draft draft) {
    draft.step(
        all(),
        plan.isSmall()
            ? "build the sled upside down on the bench: runner, then fence, guard and bridge; the clamp last"
            : "build the sled upside down on the bench: runners, then fence, guard, bridge and stop",
        new Vec(0, 0, -1),
        List.of(
            "unplug the saw while you fit runners in its slots",
            "rip the runners off a board that is wide enough to push, the wide part at the fence, and a"
                + " shaving too wide: then plane or sand them until they slide",
            "fix the runners in the slots, on shims and proud, with the base laid on; only then drive"
                + " their screws, which swell a runner: ease it with a scraper until it slides",
            "glue the fence's two layers face to face, clamped to something flat, and let them set",
            "drive only pivot and squaring screw of the fence, and clamp it, until five cuts agree",
            "cut the kerf last, fence and guard on, up to the stop; hands 150 mm away",
            "the saw's manual and local rules come before this plan"));
  }
}
