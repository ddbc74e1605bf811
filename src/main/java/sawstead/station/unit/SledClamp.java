package sawstead.station.unit;

import java.util.List;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Contact;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;

/**
 * The bought clamp that holds a small part down: a foot on the base, an arm that reaches toward the
 * blade, an upright handle that swings outward when it opens, and the hand on it, which is there
 * only in the motions. Sizes of a usual toggle clamp (common practice, no source); mm.
 *
 * @param plan of the sled
 * @param kept where the sled is kept
 */
record SledClamp(SledPlan plan, Vec kept) {
  /** Base beyond the hand's distance, for foot and handle. */
  static final double BESIDE_HAND = 110;

  /** The longest part that is small. */
  static final double LONGEST = 150;

  /** The part that is held: thickness, and length and width on the base. */
  private static final double PART_THICK = 30;

  private static final double PART_LONG = 70;
  private static final double PART_WIDE = 50;

  /** Middle of the clamp before the fence: half a hand and some air. */
  private static final double BEFORE_FENCE = 36;

  /** Nearest that the arm comes to the kerf. */
  private static final double ARM_FROM_KERF = 25;

  private static final double ARM_THICK = 12;
  private static final double FOOT = 50;
  private static final double HANDLE_HIGH = 110;
  private static final double HANDLE_WIDE = 20;

  /** A hand round the handle: as wide, and as high. */
  private static final double HAND = 60;

  private static final double OPENS = 90;

  private int sign() {
    return plan.stopSign();
  }

  private String id(String part) {
    return plan.id(part);
  }

  List<String> ids() {
    return List.of(id("clamp-foot"), id("clamp-arm"), id("clamp-handle"));
  }

  /** x of the handle's middle: half a hand beyond the distance that hands keep. */
  private double handleX() {
    return sign() * (plan.wish().hands().nominal() + HAND / 2 + plan.kerf() / 2);
  }

  /** The arm ends at its axis, over the foot, and swings up and outward. */
  private double axisX() {
    return handleX() + sign() * HANDLE_WIDE / 2;
  }

  private double armLow() {
    return plan.base() + PART_THICK;
  }

  private double y() {
    return plan.face() + BEFORE_FENCE;
  }

  private Box own(double x, double other, double halfY, double low, double high) {
    Area area = new Area(Math.min(x, other), Math.max(x, other), y() - halfY, y() + halfY);
    return area.between(low, high);
  }

  private Box keptAt(Box own) {
    return new Box(own.low().plus(kept), own.high().plus(kept));
  }

  void place(Draft draft) {
    double x = handleX();
    double top = armLow() + ARM_THICK;
    draft.box(
        PartKind.HARDWARE,
        id("clamp-foot"),
        keptAt(own(x - FOOT / 2, x + FOOT / 2, FOOT / 2, plan.base(), armLow())),
        0.25);
    draft.box(
        PartKind.HARDWARE,
        id("clamp-arm"),
        keptAt(own(sign() * ARM_FROM_KERF, axisX(), 8, armLow(), top)),
        0.15);
    draft.box(
        PartKind.HARDWARE,
        id("clamp-handle"),
        keptAt(
            own(x - HANDLE_WIDE / 2, x + HANDLE_WIDE / 2, HANDLE_WIDE / 2, top, top + HANDLE_HIGH)),
        0.1);
    draft.touch(id("clamp-foot"), id(SledParts.BASE));
    draft.touch(id("clamp-foot"), id("clamp-arm"));
    draft.touch(id("clamp-arm"), id("clamp-handle"));
  }

  private Box hand() {
    double top = armLow() + ARM_THICK + HANDLE_HIGH + 10;
    double x = handleX();
    return own(x - HAND / 2, x + HAND / 2, HAND / 2, top - HAND - 30, top);
  }

  /** The part being cut, and the hand on the clamp, on the table before the stroke. */
  List<Part> guests() {
    Vec up = new Vec(0, 0, plan.place().top());
    Box part =
        new Box(
            new Vec(
                Math.min(sign() * plan.kerf() / 2, sign() * PART_LONG), plan.face(), plan.base()),
            new Vec(
                Math.max(sign() * plan.kerf() / 2, sign() * PART_LONG),
                plan.face() + PART_WIDE,
                armLow()));
    return List.of(guest("part", part, up), guest("hand", hand(), up));
  }

  private Part guest(String name, Box box, Vec by) {
    return Part.box(
        PartKind.ENVELOPE, id(name), new Box(box.low().plus(by), box.high().plus(by)), 0);
  }

  void tellMotion(Draft draft) {
    Vec axis = new Vec(axisX(), y(), armLow()).plus(kept);
    draft.mover(
        new Mover(
            id("clamp-opens"),
            List.of(id("clamp-arm"), id("clamp-handle")),
            new Turn(axis, new Vec(0, sign(), 0), 0, OPENS, 0),
            List.of(new Contact(id("clamp-arm"), id("clamp-foot"))),
            Setting.guests(List.of(guest("hand-opens", hand(), kept)))));
  }
}
