package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Mover;

/**
 * The switch can be slapped from where the operator stands (REF-SAF-06): {@code switch-blocked}
 * (stop) when anything stands in the column of {@link #HAND} in front of it. A knee paddle may: it
 * has a window for the start and presses the stop.
 *
 * <p>Heuristic: a straight column, as wide and high as the switch.
 */
final class SwitchCheck implements Check {
  /** Free room in front of the switch for a hand, mm (common practice, no source). */
  static final double HAND = 120;

  @Override
  public Outcome judge(Scene scene) {
    Optional<Body> spot = scene.body("saw/switch");
    if (spot.isEmpty()) {
      return Outcome.of(List.of());
    }
    Box box = spot.get().box();
    Body column =
        new Body(
            "hand",
            Solids.box(box.size().x(), HAND, box.size().z()),
            Placement.at(new Vec(box.low().x(), box.low().y() - HAND, box.low().z())));
    List<String> paddle =
        scene.station().mover("paddle/presses").map(Mover::moves).orElse(List.of());
    Outcome.Notes notes = new Outcome.Notes();
    for (Body other : scene.bodies()) {
      if (other.id().startsWith("saw/")
          || paddle.contains(other.id())
          || !other.box().overlaps(column.box(), 0)) {
        continue;
      }
      Overlap.between(column, other)
          .filter(o -> o.depth() > scene.contact())
          .ifPresent(
              o ->
                  notes.add(
                      Finding.stop(
                          "switch-blocked",
                          List.of("saw/switch", other.id()),
                          o.centroid(),
                          other.id() + " stands in front of the saw's switch",
                          "keep "
                              + scene.words().length(HAND)
                              + " free in front of it, so that a hand or a knee finds it without"
                              + " looking")));
    }
    return notes.outcome();
  }
}
