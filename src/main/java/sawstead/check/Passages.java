package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import sawstead.solid.Body;
import sawstead.solid.Motion;
import sawstead.solid.Sweep;
import sawstead.station.Contact;
import sawstead.station.Mover;
import sawstead.station.Situation;
import sawstead.station.Station;

/**
 * Makes every motion of a station, in its setting, among all bodies that it does not move. Besides
 * the pairs that a motion declares, those that the station declares may touch on the way. What is
 * claimed is what {@link Sweep} claims.
 *
 * <p>When something stands in the way that has a motion of its own, the motion is made again with
 * that thing at the far end of its way, and so on: a leaf folds once the bars under it are pushed
 * in.
 */
final class Passages {
  private Passages() {}

  /** The motions by id. */
  static List<Passage> of(Station station, double contact) {
    return station.movers().stream()
        .sorted(Comparator.comparing(Mover::id))
        .map(m -> passage(station, m, contact))
        .toList();
  }

  /** One motion by its id; nothing if there is none. */
  static List<Passage> ofOne(Station station, String id, double contact) {
    return station.mover(id).stream().map(m -> passage(station, m, contact)).toList();
  }

  private static Passage passage(Station station, Mover mover, double contact) {
    List<Contact> contacts = contacts(station, mover);
    Mover complete =
        new Mover(mover.id(), mover.moves(), mover.motion(), contacts, mover.setting());
    Sweep sweep = sweep(station, complete, List.of(), contact);
    Optional<Double> least =
        sweep.leastClearance().isPresent()
            ? Optional.of(sweep.leastClearance().getAsDouble())
            : Optional.empty();
    return new Passage(
        complete,
        least,
        sweep.firstContact().map(c -> new Passage.Contact(c.with(), c.mover(), c.at(), c.point())),
        after(station, complete, sweep, contact));
  }

  /** Motions that clear the way, in the order in which they turned out to be needed. */
  private static List<String> after(Station station, Mover mover, Sweep blocked, double contact) {
    if (!mover.setting().guests().isEmpty()) {
      // Nobody opens a lid so that a bar or a board can pass where it lies.
      return List.of();
    }
    List<Mover> made = new ArrayList<>();
    Sweep sweep = blocked;
    while (sweep.firstContact().isPresent()) {
      String with = sweep.firstContact().get().with();
      Optional<Mover> next =
          station.movers().stream()
              .filter(m -> m.moves().contains(with) && !made.contains(m))
              .filter(m -> m.setting().isPlain())
              .filter(m -> !mover.setting().others().containsKey(m.id()))
              .filter(m -> m.moves().stream().noneMatch(mover.moves()::contains))
              .findFirst();
      if (next.isEmpty()) {
        return List.of();
      }
      made.add(next.get());
      sweep = sweep(station, mover, made, contact);
    }
    return made.stream().map(Mover::id).toList();
  }

  private static Sweep sweep(Station station, Mover mover, List<Mover> made, double contact) {
    Situation situation = Situation.of(station, mover);
    List<Body> obstacles = situation.standing().stream().map(b -> placed(b, made)).toList();
    return sweep(mover.motion(), situation.moved(), obstacles, mover.contacts(), contact);
  }

  /** Bodies through a motion among obstacles, where some pairs may touch. */
  static Sweep sweep(
      Motion motion,
      List<Body> moved,
      List<Body> obstacles,
      List<Contact> contacts,
      double contact) {
    Set<sawstead.solid.Contact> declared =
        contacts.stream()
            .map(c -> new sawstead.solid.Contact(c.a(), c.b()))
            .collect(Collectors.toSet());
    return Sweep.of(motion, moved, obstacles, declared, Math.max(contact, Sweep.BEGIN));
  }

  /** A body at the far end of the motions made so far. */
  private static Body placed(Body body, List<Mover> made) {
    Body placed = body;
    for (Mover mover : made) {
      if (mover.moves().contains(body.id())) {
        Motion motion = mover.motion();
        double back = Math.abs(motion.from() - motion.rest());
        double forth = Math.abs(motion.to() - motion.rest());
        placed = placed.moved(motion.at(back > forth ? motion.from() : motion.to()));
      }
    }
    return placed;
  }

  /** Pairs of a mover and something that stands still, in order. */
  private static List<Contact> contacts(Station station, Mover mover) {
    TreeSet<Contact> all =
        new TreeSet<>(Comparator.comparing(Contact::a).thenComparing(Contact::b));
    all.addAll(mover.contacts());
    for (Contact contact : station.contacts()) {
      boolean a = mover.moves().contains(contact.a());
      boolean b = mover.moves().contains(contact.b());
      if (a != b) {
        all.add(contact);
      }
    }
    return List.copyOf(all);
  }
}
