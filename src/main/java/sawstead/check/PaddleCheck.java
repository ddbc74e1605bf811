package sawstead.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sawstead.brief.SwitchSpot;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Distance;
import sawstead.solid.Motion;
import sawstead.solid.Overlap;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;

/**
 * A knee paddle over the switch does what it is for, and nothing else.
 *
 * <ul>
 *   <li>{@code paddle-short} (stop): swung to its bumper it has not pressed the stop so far that
 *       the saw is off;
 *   <li>{@code paddle-start} (stop): on its way it comes nearer to the start than {@link
 *       #FROM_START};
 *   <li>{@code paddle-rests} (stop): let go, it hangs nearer to the stop than {@link #HANGING}, so
 *       a crooked floor or a chip lets it rest on the switch;
 *   <li>{@code paddle-knee} (mind): a knee does not find it.
 * </ul>
 *
 * Exact on the solids; distances and heights are common practice, no source.
 */
final class PaddleCheck implements Check {
  static final double FROM_START = 3;
  static final double HANGING = 3;

  /** A knee and the thigh above it, standing: from the floor, mm (common practice, no source). */
  static final double KNEE_LOW = 420;

  static final double KNEE_HIGH = 680;

  /** How much of the board must lie in that band. */
  static final double KNEE_NEEDS = 80;

  private static final List<String> SWINGING = List.of("paddle/board", "paddle/press");

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    Optional<Mover> mover = scene.station().mover("paddle/presses");
    Optional<Body> stop = scene.body("saw/switch-stop");
    if (mover.isPresent() && stop.isPresent()) {
      Turn turn = (Turn) mover.get().motion();
      presses(scene, turn, stop.get(), notes);
      start(scene, turn, stop.get(), notes);
      rests(scene, turn, stop.get(), notes);
      if (scene.station().site().isPresent()) {
        knee(scene, notes);
      }
    }
    return notes.outcome();
  }

  private static Body press(Scene scene) {
    return scene.body("paddle/press").orElseThrow();
  }

  private static SwitchSpot spot(Scene scene) {
    return scene.brief().saw().orElseThrow().switchSpot();
  }

  /** Pressed is the stop when the block reaches a plane one stroke behind the stop's face. */
  private static void presses(Scene scene, Motion motion, Body stop, Outcome.Notes notes) {
    Body pressed = press(scene).moved(motion.at(motion.to()));
    double stroke = spot(scene).stroke().nominal();
    Box face = stop.box();
    double into = pressed.box().high().y() - face.low().y();
    List<String> about = List.of("paddle/press", "saw/switch-stop");
    if (into <= stroke || !isPressed(pressed, face, stroke)) {
      double lacks = stroke - into;
      notes.add(
          Finding.stop(
              "paddle-short",
              about,
              pressed.centroid(),
              lacks > 0
                  ? String.format(
                      Locale.ROOT,
                      "swung by %.1f degrees, the paddle is %s short of pressing the stop",
                      motion.to(),
                      scene.words().length(lacks))
                  : "the paddle's press block swings past the stop",
              written(scene)
                  ? "leave out what you wrote of the paddle (paddle.press, paddle.travel): it is"
                      + " then made as long as it must be"
                  : "make the press block "
                      + scene.words().atLeast(Math.max(lacks, 1))
                      + " longer (paddle.press), or let it swing farther (paddle.travel)"));
    } else {
      notes.add(Margin.length("paddle-press", "the paddle presses the stop", about, into, stroke));
    }
  }

  /** Whether the user, and not the program, chose how long or how far. */
  private static boolean written(Scene scene) {
    return scene
        .brief()
        .paddle()
        .map(w -> w.press().isPresent() || w.travel().isPresent())
        .orElse(false);
  }

  private static boolean isPressed(Body pressed, Box face, double stroke) {
    Body behind =
        box(
            new Vec(face.low().x(), face.low().y() + stroke, face.low().z()),
            new Vec(face.high().x(), pressed.box().high().y() + 1, face.high().z()));
    return Overlap.between(pressed, behind).isPresent();
  }

  private static Body box(Vec low, Vec high) {
    return Part.box(PartKind.ENVELOPE, "there", new Box(low, high), 0).body();
  }

  /** The half of the plate that is not the stop's, grown by what the paddle keeps away. */
  private static void start(Scene scene, Motion motion, Body stop, Outcome.Notes notes) {
    Box plate = scene.body("saw/switch").orElseThrow().box();
    Vec other = plate.centre().scale(2).minus(stop.box().centre());
    Vec half = stop.box().size().scale(0.5);
    Body start =
        box(
            new Vec(
                other.x() - half.x() - FROM_START,
                plate.low().y() - FROM_START,
                other.z() - half.z() - FROM_START),
            new Vec(
                other.x() + half.x() + FROM_START,
                plate.high().y(),
                other.z() + half.z() + FROM_START));
    List<Body> swinging = SWINGING.stream().map(id -> scene.body(id).orElseThrow()).toList();
    Passages.sweep(motion, swinging, List.of(start), List.of(), scene.contact())
        .firstContact()
        .ifPresent(
            c ->
                notes.add(
                    Finding.stop(
                        "paddle-start",
                        List.of(c.mover(), "saw/switch"),
                        c.point(),
                        String.format(
                            Locale.ROOT,
                            "swung by %.1f degrees, %s comes within %s of the start",
                            c.at(),
                            c.mover(),
                            scene.words().length(FROM_START)),
                        "make the press block longer (paddle.press), so that the board stays"
                            + " away: a paddle never presses a start")));
  }

  /** Hanging free, the balance point of board and block is below the axis. */
  private static void rests(Scene scene, Turn turn, Body stop, Outcome.Notes notes) {
    Vec moment = Vec.ZERO;
    for (String id : SWINGING) {
      Part part = scene.station().part(id).orElseThrow();
      moment = moment.plus(part.body().centroid().minus(turn.at()).scale(part.mass()));
    }
    double hangs = -Math.toDegrees(Math.atan2(moment.y(), -moment.z()));
    Body hanging = press(scene).moved(turn.at(hangs));
    double gap =
        Overlap.between(hanging, stop).isPresent()
            ? 0
            : Stream.of(stop, scene.body("saw/switch").orElseThrow())
                .mapToDouble(b -> Distance.between(hanging, b).value())
                .min()
                .orElseThrow();
    List<String> about = List.of("paddle/press", "saw/switch-stop");
    if (gap < HANGING - 1e-9) {
      notes.add(
          Finding.stop(
              "paddle-rests",
              about,
              hanging.centroid(),
              "let go, the paddle hangs only " + scene.words().length(gap) + " from the stop",
              "give it a gap of at least "
                  + scene.words().length(HANGING)
                  + " (paddle.gap), or a shorter press block"));
    } else {
      notes.add(Margin.length("paddle-rests", "free before the stop, let go", about, gap, HANGING));
    }
  }

  private static void knee(Scene scene, Outcome.Notes notes) {
    Box board = scene.body("paddle/board").orElseThrow().box();
    double low = Math.max(KNEE_LOW, board.low().z());
    double high = Math.min(KNEE_HIGH, board.high().z());
    double found = Math.max(0, high - low);
    List<String> about = List.of("paddle/board");
    if (found < KNEE_NEEDS) {
      notes.add(
          Finding.general(
              Severity.MIND,
              "paddle-knee",
              about,
              "only %s of the paddle hangs where a knee is, %s to %s above the floor"
                  .formatted(
                      scene.words().length(found),
                      scene.words().length(KNEE_LOW),
                      scene.words().length(KNEE_HIGH)),
              "set its lower edge at most %s above the floor (paddle.bottom)"
                  .formatted(
                      scene.words().length(Math.min(KNEE_HIGH, board.high().z()) - KNEE_NEEDS))));
    } else {
      notes.add(
          Margin.length("paddle-knee", "of the paddle where a knee is", about, found, KNEE_NEEDS));
    }
  }
}
