package sawstead.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.solid.Slide;
import sawstead.station.Mover;
import sawstead.station.Part;

/**
 * What the station lets move, moves.
 *
 * <ul>
 *   <li>{@code motion-blocked} (stop): a fence, a lid, a leaf, a bar or a plug meets something on
 *       its way, or a board that the brief names meets the station;
 *   <li>{@code feed-blocked} (mind for a board that the brief names, else note): a board meets the
 *       room, or one that is only tried meets the station;
 *   <li>{@code door-blocked} (mind): the room's door meets the station before it is open;
 *   <li>{@code exit-blocked} (mind): what comes out of the station meets the room;
 *   <li>{@code motion-order} (note): something is met, but can be moved out of the way first.
 * </ul>
 *
 * Certified in the sense of the kernel's sweep. A combined state is told only where the motion
 * meets something else than it does by itself.
 */
final class MotionCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Passage passage : scene.passages()) {
      passage
          .firstContact()
          .filter(c -> !isKnown(scene, passage, c))
          .ifPresent(c -> notes.add(finding(scene, passage, c)));
    }
    margins(scene).forEach(notes::add);
    return notes.outcome();
  }

  /**
   * By how much motions are clear: of several that are alike, such as four casters, the tightest.
   * Ways out are told with the exits. What rubs all the way has no clearance to tell; its contact
   * was not declared, that is all.
   */
  private static List<Margin> margins(Scene scene) {
    Map<String, Margin> tightest = new TreeMap<>();
    for (Passage passage : scene.passages()) {
      String id = passage.mover().id();
      boolean told =
          passage.firstContact().isEmpty()
              && passage.mover().setting().others().isEmpty()
              && !ExitMotions.has(passage.mover())
              && passage.leastClearance().orElse(0.0) > scene.contact();
      if (told) {
        tightest.merge(
            id.replaceAll("-[0-9]+", ""),
            Margin.length(
                "clear-" + id,
                id + " on its way",
                about(passage),
                passage.leastClearance().get(),
                0),
            (a, b) -> a.has() <= b.has() ? a : b);
      }
    }
    return List.copyOf(tightest.values());
  }

  /** What moves: ids of bodies, of guests where nothing else does. */
  private static List<String> about(Passage passage) {
    Mover mover = passage.mover();
    return mover.moves().isEmpty()
        ? mover.setting().guests().stream().map(Part::id).toList()
        : mover.moves();
  }

  private static boolean isKnown(Scene scene, Passage passage, Passage.Contact contact) {
    Mover mover = passage.mover();
    return !mover.setting().others().isEmpty()
        && scene.passages().stream()
            .filter(p -> p.mover().setting().others().isEmpty())
            .filter(p -> p.mover().moves().equals(mover.moves()))
            .filter(p -> p.mover().motion().equals(mover.motion()))
            .flatMap(p -> p.firstContact().stream())
            .anyMatch(c -> c.with().equals(contact.with()) && c.mover().equals(contact.mover()));
  }

  private static Finding finding(Scene scene, Passage passage, Passage.Contact contact) {
    String id = passage.mover().id();
    List<String> about = List.of(id, contact.mover(), contact.with());
    if (!passage.after().isEmpty()) {
      return new Finding(
          Severity.NOTE,
          "motion-order",
          about,
          Optional.of(contact.point()),
          id + " only goes after " + String.join(" and ", passage.after()),
          "move " + contact.with() + " out of the way first");
    }
    boolean slide = passage.mover().motion() instanceof Slide;
    double way = Math.abs(contact.at() - passage.mover().motion().from());
    String after =
        slide ? scene.words().length(way) : String.format(Locale.ROOT, "%.1f degrees", way);
    String meets = contact.mover() + " meets " + contact.with() + " after " + after;
    if (id.startsWith("room/door")) {
      return Finding.mind(
          "door-blocked",
          about,
          contact.point(),
          "the room's door meets " + contact.with() + " after " + after,
          "stand the station elsewhere in the room, or roll it aside to go out");
    }
    if (id.startsWith("feed/")) {
      boolean named = scene.brief().feeds().isPresent();
      if (!named || contact.with().startsWith("room/")) {
        return new Finding(
            named ? Severity.MIND : Severity.NOTE,
            "feed-blocked",
            about,
            Optional.of(contact.point()),
            meets + " of its way",
            "cut the board shorter or narrower first, or stand the station elsewhere");
      }
    }
    if (ExitMotions.has(passage.mover()) && contact.with().startsWith("room/")) {
      return Finding.mind(
          "exit-blocked",
          about,
          contact.point(),
          meets + " of its way out",
          "roll the station away from there before you take it out");
    }
    return PaddleBesideWheel.finding(scene, passage, contact, about)
        .orElseGet(
            () ->
                Finding.stop(
                    "motion-blocked",
                    about,
                    contact.point(),
                    id + ": " + meets,
                    MotionRemedy.of(scene, passage, contact)));
  }
}
