package sawstead.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.solid.Body;
import sawstead.station.Situation;

/**
 * Why a hand-wheel that swings with the blade meets a knee paddle, and what helps. The paddle was
 * set as far away as its switch allows, so nothing is moved out of the way.
 */
final class PaddleBesideWheel {
  private static final String WHEEL = "saw/hand-wheel";

  /** A tilt of less is of no use, degrees. */
  private static final double LEAST_TILT = 5;

  private PaddleBesideWheel() {}

  /** The finding, where it is this that blocks a motion. */
  static Optional<Finding> finding(
      Scene scene, Passage passage, Passage.Contact contact, List<String> about) {
    if (!contact.mover().equals(WHEEL) || !contact.with().startsWith("paddle/")) {
      return Optional.empty();
    }
    String at = String.format(Locale.ROOT, "tilted by %.1f degrees, ", contact.at());
    double most = Math.floor(contact.at());
    String till =
        most < LEAST_TILT
            ? ""
            : String.format(
                Locale.ROOT,
                ", or take it off to tilt farther than %.0f degrees, and write that"
                    + " (saw.tilt.degrees: %.0f)",
                most,
                most);
    String says =
        swingsOverSwitch(scene, passage)
            ? at
                + "the hand-wheel meets "
                + contact.with()
                + ": as measured, it swings over the switch itself"
            : at
                + "the hand-wheel meets "
                + contact.with()
                + ": it swings so near the switch that no paddle finds room beside it";
    return Optional.of(
        Finding.stop(
            "motion-blocked",
            about,
            contact.point(),
            says,
            "measure saw.wheel, saw.tilt.side and saw.switch.x again; else leave `paddle` out"
                + till));
  }

  private static boolean swingsOverSwitch(Scene scene, Passage passage) {
    List<Body> wheel =
        Situation.of(scene.station(), passage.mover()).moved().stream()
            .filter(b -> b.id().equals(WHEEL))
            .toList();
    return scene
        .body("saw/switch")
        .flatMap(
            s ->
                Passages.sweep(
                        passage.mover().motion(), wheel, List.of(s), List.of(), scene.contact())
                    .firstContact())
        .isPresent();
  }
}
