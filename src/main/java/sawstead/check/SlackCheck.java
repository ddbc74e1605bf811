package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Protrusion;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Site;

/**
 * The saw's cord reaches through its hole, also when the blade is tilted and the motor that it
 * leaves has swung away: {@code cord-short} (mind), and the slack as a margin.
 *
 * <p>The cord is taken from the middle of the side that it leaves (of the motor, where one swings
 * behind the table and the cord leaves to the rear) straight to its hole, through the top and
 * {@link #BELOW} further. During a tilt the distance to the hole is that of a point on a circle,
 * whose greatest value is in closed form. Conservative for cords that leave nearer to the hole. The
 * lids swing over cord and hose without moving either: both hang between the saw and the stand, and
 * are bodies that a lid would meet.
 */
final class SlackCheck implements Check {
  /** Room below the top to take hold of a plug, mm (common practice, no source). */
  static final double BELOW = 150;

  @Override
  public Outcome judge(Scene scene) {
    Optional<Site> site = scene.station().site();
    Optional<Mover> hole = scene.station().mover("ports/cord-plug-passes");
    if (site.isEmpty() || hole.isEmpty()) {
      return Outcome.of(List.of());
    }
    Saw saw = site.get().saw();
    Vec plug = hole.get().setting().guests().get(0).body().centroid();
    Vec mouth = new Vec(plug.x(), plug.y(), site.get().levels().sawFeet());
    double above = furthest(scene, site.get(), mouth);
    double needs = above + site.get().levels().top() + BELOW;
    double has = saw.cord().length().low();
    Outcome.Notes notes = new Outcome.Notes();
    notes.add(
        Margin.length("cord-slack", "cord through its hole", List.of("saw/body"), has, needs));
    if (has < needs) {
      notes.add(
          Finding.mind(
              "cord-short",
              List.of("saw/body"),
              mouth,
              "the saw's cord is "
                  + scene.words().length(needs - has)
                  + " too short to hang through its hole with slack"
                  + (swings(scene, saw).isPresent() ? " when the blade is tilted" : ""),
              "use a cord at least "
                  + scene.words().atLeast(needs - has)
                  + " longer, or a socket above the stand's top"));
    }
    return notes.outcome();
  }

  /** The greatest distance from where the cord leaves to the mouth of its hole, mm. */
  private static double furthest(Scene scene, Site site, Vec mouth) {
    Optional<Box> motor = swings(scene, site.saw());
    Optional<Mover> tilt = scene.station().mover("saw/tilts");
    if (motor.isEmpty() || tilt.isEmpty() || !(tilt.get().motion() instanceof Turn turn)) {
      Box body = scene.body("saw/body").orElseThrow().box();
      return middleOf(body, site.saw().cord().side()).distance(mouth);
    }
    Vec leaves = middleOf(motor.get(), Side.REAR);
    double furthest =
        Math.max(
            turn.at(turn.from()).apply(leaves).distance(mouth),
            turn.at(turn.to()).apply(leaves).distance(mouth));
    // In between it is furthest where it stands opposite to the mouth, seen along the axis.
    Vec axis = turn.direction();
    double here = angle(axis, leaves.minus(turn.at()));
    double there = angle(axis, mouth.minus(turn.at())) + 180;
    double opposite = ((there - here) % 360 + 360) % 360;
    return opposite < turn.to()
        ? Math.max(furthest, turn.at(opposite).apply(leaves).distance(mouth))
        : furthest;
  }

  /** Angle about an axis along y by the right hand, degrees. */
  private static double angle(Vec axis, Vec from) {
    return Math.toDegrees(Math.atan2(from.x(), from.z())) * Math.signum(axis.y());
  }

  /** What swings behind the table and lets the cord out, if there is such a thing. */
  private static Optional<Box> swings(Scene scene, Saw saw) {
    return saw.cord().side() != Side.REAR
        ? Optional.empty()
        : saw.behind().stream()
            .filter(Protrusion::swings)
            .findFirst()
            .flatMap(p -> scene.body("saw/" + p.id()))
            .map(b -> b.box());
  }

  private static Vec middleOf(Box box, Side side) {
    Vec c = box.centre();
    return switch (side) {
      case LEFT -> new Vec(box.low().x(), c.y(), c.z());
      case RIGHT -> new Vec(box.high().x(), c.y(), c.z());
      case FRONT -> new Vec(c.x(), box.low().y(), c.z());
      case REAR -> new Vec(c.x(), box.high().y(), c.z());
      case BELOW -> new Vec(c.x(), c.y(), box.low().z());
    };
  }
}
