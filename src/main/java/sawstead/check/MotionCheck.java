package sawstead.check;

import java.util.List;
import java.util.Locale;
import sawstead.solid.Slide;

/**
 * What the station lets move, moves: {@code motion-blocked} (stop) when a fence, a lid, a leaf or a
 * bar meets something on its way. Certified in the sense of the kernel's sweep.
 */
final class MotionCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Passage passage : scene.passages()) {
      passage.firstContact().ifPresent(c -> notes.add(finding(scene, passage, c)));
    }
    return notes.outcome();
  }

  private static Finding finding(Scene scene, Passage passage, Passage.Contact contact) {
    boolean slide = passage.mover().motion() instanceof Slide;
    double way = Math.abs(contact.at() - passage.mover().motion().from());
    String after =
        slide ? scene.words().length(way) : String.format(Locale.ROOT, "%.1f degrees", way);
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
