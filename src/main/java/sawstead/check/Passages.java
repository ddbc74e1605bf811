package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sawstead.solid.Body;
import sawstead.solid.Contact;
import sawstead.solid.Sweep;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;

/** Takes every motion of a station over all that stays, by the kernel's certified sweep. */
final class Passages {
  private Passages() {}

  /** What was found about every motion, by id. */
  static List<Passage> of(Station station, double contact) {
    List<Passage> passages = new ArrayList<>();
    for (Mover mover : station.movers()) {
      passages.add(of(station, mover, contact));
    }
    passages.sort(Comparator.comparing(p -> p.mover().id()));
    return passages;
  }

  static Passage of(Station station, Mover mover, double contact) {
    List<Body> moving = new ArrayList<>();
    List<Body> staying = new ArrayList<>();
    for (Part part : station.parts().values()) {
      (mover.moves().contains(part.id()) ? moving : staying).add(part.body());
    }
    Set<Contact> contacts =
        mover.contacts().stream().map(c -> new Contact(c.a(), c.b())).collect(Collectors.toSet());
    Sweep sweep =
        Sweep.of(mover.motion(), moving, staying, contacts, Math.max(contact, Sweep.BEGIN));
    Optional<Double> least =
        sweep.leastClearance().isPresent()
            ? Optional.of(sweep.leastClearance().getAsDouble())
            : Optional.empty();
    return new Passage(
        mover,
        least,
        sweep.firstContact().map(c -> new Passage.Contact(c.with(), c.mover(), c.at(), c.point())));
  }
}
