package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Knife;
import sawstead.joinery.Board;
import sawstead.solid.Bore;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Recess;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Remark;
import sawstead.station.Setting;
import sawstead.station.Unit;

/**
 * A zero-clearance insert: blank with rabbeted rim, levelling screws where the rim can hold them,
 * finger hole, anti-lift pin at the rear, slot for the knife, relief over the blade at its lowest.
 * Its kerf is only marked: the blade cuts it. It is kept beside the station and set in the throat.
 */
final class InsertUnit implements Unit {
  /** A rim that holds a thread, and its hole (common practice, no source). */
  private static final double HOLDS_THREAD = 6;

  private static final double LEVEL_HOLE = 4.2;

  private static final double FINGER = 22;
  private static final double FINGER_EDGE = 5;

  private static final double PIN = 3;
  private static final double PIN_DEPTH = 15;

  /** Gap on either side of the knife, and before and behind it. */
  private static final double KNIFE_SIDE = 0.4;

  private static final double KNIFE_END = 2;

  /** Wood left behind the knife's slot; less breaks out, so the slot runs out of the end. */
  private static final double BEHIND_KNIFE = 8;

  private static final double RELIEF_HALF = 6;
  private static final double RELIEF_BEYOND = 10;

  /** How far it is lifted out. */
  private static final double LIFT = 40;

  private static final double APART = 60;

  private final InsertPlan plan;
  private final Placement inSaw;
  private final Vec kept;

  InsertUnit(InsertPlan plan) {
    this.plan = plan;
    double top = plan.place().top();
    double x = plan.saw().throat().x().nominal();
    double y = plan.saw().blade().arbor().nominal();
    inSaw =
        Placement.of(new Vec(x, y, top - plan.thickness()), new Vec(0, 1, 0), new Vec(-1, 0, 0));
    double length = plan.throat().length() + APART;
    double width = plan.throat().width();
    Area place =
        new Beside(plan.brief(), plan.place())
            .of(width, -(plan.number() + 1) * length - length / 2, length, 0);
    kept = new Vec(place.centreX() - x, place.centreY() - y, plan.thickness() - top);
  }

  @Override
  public void place(Draft draft) {
    double gap = plan.wish().fit().nominal();
    draft.board(
        new Board(
            plan.id(),
            plan.sheet().name(),
            plan.thickness(),
            plan.sheet().density().nominal(),
            plan.throat().alongU(gap),
            features(draft),
            inSaw.moved(kept)));
    draft.step(
        List.of(plan.id()),
        "make the insert, fit it level with the table, and let the blade cut its kerf",
        new Vec(0, 0, -1),
        List.of(
            "unplug the saw; turn the blade down and fit the insert: it neither rocks nor stands proud,"
                + " and its front edge is never higher than the table",
            "turn the blade by hand at its lowest: where it touches the blank, deepen the relief below,"
                + " or start the kerf with a smaller blade",
            "refit knife and pin; clamp a batten across the insert at both ends, clear of the kerf",
            "plug in, stand aside, hands off, start the saw and raise the blade slowly through; then"
                + " stop and unplug",
            "it is for cuts at 90 degrees only: a tilted blade meets its ledge; the saw's manual rules"));
  }

  private List<Feature> features(Draft draft) {
    List<Feature> features = new ArrayList<>();
    double bu = plan.halfLength();
    double bv = plan.halfWidth();
    if (plan.isRabbeted()) {
      double u = plan.throat().length();
      double v = plan.throat().width();
      double depth = plan.thickness() - plan.rim();
      Stream.of(
              Outline.rectangle(-u, -v, -bu, v),
              Outline.rectangle(bu, -v, u, v),
              Outline.rectangle(-bu, -v, bu, -bv),
              Outline.rectangle(-bu, bv, bu, v))
          .forEach(o -> features.add(new Recess("rabbet", o, depth, Face.BACK)));
    }
    relief(features, bu);
    plan.saw()
        .knife()
        .filter(k -> plan.wish().knifeSlot())
        .ifPresent(knife -> features.add(slot(knife)));
    finger(draft, features, bu, bv);
    level(draft, features, bu);
    double web = plan.thickness() - plan.rim();
    if (web > PIN + 1) {
      double away = plan.kerfV() >= 0 ? -bv / 2 : bv / 2;
      features.add(new EdgeBore(new Vec(bu, away, web / 2), new Vec(-1, 0, 0), PIN, PIN_DEPTH));
    } else {
      draft.remark(
          Remark.Weight.NOTE,
          "insert-pin",
          List.of(plan.id()),
          "the insert is too thin for a pin under the ledge at its rear",
          "screw a strip below it at the rear that catches under the ledge, so that the blade cannot"
              + " lift it");
    }
    double c = plan.halfChord();
    features.add(
        new Mark("kerf", Face.FRONT, List.of(new Mark.Stroke(-c, plan.kerfV(), c, plan.kerfV()))));
    return features;
  }

  private void relief(List<Feature> features, double bu) {
    double depth = plan.thickness() - InsertPlan.OVER_BLADE;
    if (depth > 1) {
      double half = Math.min(plan.halfChord() + RELIEF_BEYOND, bu - FINGER_EDGE);
      features.add(
          new Recess(
              "relief",
              Outline.rectangle(
                  -half, plan.kerfV() - RELIEF_HALF, half, plan.kerfV() + RELIEF_HALF),
              depth,
              Face.BACK));
    }
  }

  /** Round the knife where the saw has it, open to the rear where too little wood would be left. */
  private Opening slot(Knife knife) {
    double[] y = SawUnit.knifeAlong(plan.saw(), knife);
    double arbor = plan.saw().blade().arbor().nominal();
    double half = knife.thickness().nominal() / 2 + KNIFE_SIDE;
    double end = plan.throat().length() / 2 - plan.wish().fit().nominal();
    double rear = y[1] - arbor + KNIFE_END;
    return new Opening(
        Outline.rectangle(
            y[0] - arbor - KNIFE_END,
            plan.kerfV() - half,
            rear > end - BEHIND_KNIFE ? end + 1 : rear,
            plan.kerfV() + half));
  }

  /** Near the operator, before the blade where there is room, else beside it. */
  private void finger(Draft draft, List<Feature> features, double bu, double bv) {
    double r = FINGER / 2;
    double u = -bu + FINGER_EDGE + r;
    boolean beforeBlade = u + r + FINGER_EDGE < -plan.halfChord() - RELIEF_BEYOND;
    double side = plan.kerfV() >= 0 ? -(bv - FINGER_EDGE - r) : bv - FINGER_EDGE - r;
    boolean beside = Math.abs(side - plan.kerfV()) > r + RELIEF_HALF + 1 && bv > FINGER_EDGE + r;
    if (beforeBlade && bv > FINGER_EDGE + r) {
      features.add(Bore.through(u, 0, FINGER));
    } else if (beside) {
      features.add(Bore.through(u, side, FINGER));
    } else {
      draft.remark(
          Remark.Weight.NOTE,
          "insert-finger",
          List.of(plan.id()),
          "the insert has no room for a finger hole that stays clear of blade and ledge",
          "lift it out by its knife slot or with a screwdriver, unplugged");
    }
  }

  private void level(Draft draft, List<Feature> features, double bu) {
    if (plan.rim() >= HOLDS_THREAD) {
      double v = (plan.halfWidth() + plan.throat().width() / 2) / 2;
      for (double u : new double[] {-0.8 * bu, 0.8 * bu}) {
        features.add(Bore.through(u, -v, LEVEL_HOLE));
        features.add(Bore.through(u, v, LEVEL_HOLE));
      }
      return;
    }
    draft.remark(
        Remark.Weight.NOTE,
        "insert-level",
        List.of(plan.id()),
        "the insert's rim is %s thick, which holds no levelling screw; it lies %s shy"
            .formatted(draft.length(plan.rim()), draft.length(InsertPlan.SHY)),
        "level it with layers of tape under the rim until a straightedge passes over it");
  }

  @Override
  public void join(Draft draft) {
    draft.mover(
        new Mover(
            wishId() + "/lifts-out",
            List.of(plan.id()),
            new Slide(new Vec(0, 0, 1), 0, LIFT, 0),
            List.of(new Contact(plan.id(), "saw/table")),
            Setting.aside(List.of("saw/guard", "saw/blade")).set(Placement.at(kept.scale(-1)))));
  }

  private String wishId() {
    return plan.wish().id();
  }
}
