package sawstead.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sawstead.solid.Slide;

/**
 * What the station lets move, moves.
 *
 * <ul>
 *   <li>{@code motion-blocked} (stop): a fence, a lid, a leaf or a bar meets something on its way;
 *   <li>{@code door-blocked} (mind): the room's door meets the station before it is open;
 *   <li>{@code motion-order} (note): it does, but what it meets can be moved out of its way first.
 * </ul>
 *
 * Certified in the sense of the kernel's sweep.
 */
final class MotionCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Passage passage : scene.passages()) {
      passage.firstContact().ifPresent(c -> notes.add(finding(scene, passage, c)));
      if (passage.firstContact().isEmpty()) {
        // What rubs all the way has no clearance to tell; its contact was not declared, that is
        // all.
        passage
            .leastClearance()
            .filter(least -> least > scene.contact())
            .ifPresent(
                least ->
                    notes.add(
                        Margin.length(
                            "clear-" + passage.mover().id(),
                            passage.mover().id() + " on its way",
                            passage.mover().moves(),
                            least,
                            0)));
      }
    }
    return notes.outcome();
  }

  private static Finding finding(Scene scene, Passage passage, Passage.Contact contact) {
    if (!passage.after().isEmpty()) {
      return new Finding(
          Severity.NOTE,
          "motion-order",
          List.of(passage.mover().id(), contact.mover(), contact.with()),
          Optional.of(contact.point()),
          passage.mover().id() + " only goes after " + String.join(" and ", passage.after()),
          "move " + contact.with() + " out of the way first");
    }
    boolean slide = passage.mover().motion() instanceof Slide;
    double way = Math.abs(contact.at() - passage.mover().motion().from());
    String after =
        slide ? scene.words().length(way) : String.format(Locale.ROOT, "%.1f degrees", way);
    if (passage.mover().id().startsWith("room/door")) {
      return Finding.mind(
          "door-blocked",
          List.of(passage.mover().id(), contact.mover(), contact.with()),
          contact.point(),
          "the room's door meets " + contact.with() + " after " + after,
          "stand the station elsewhere in the room, or roll it aside to go out");
    }
    return Finding.stop(
        "motion-blocked",
        List.of(passage.mover().id(), contact.mover(), contact.with()),
        contact.point(),
        passage.mover().id()
            + ": "
            + contact.mover()
            + " meets "
            + contact.with()
            + " after "
            + after,
        "move " + contact.with() + " out of the way, or shorten the motion");
  }
}
