package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.assembly.Exit;
import sawstead.solid.Body;
import sawstead.solid.Distance;
import sawstead.solid.Motion;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Turn;
import sawstead.station.Contact;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Setting;
import sawstead.station.Station;

/**
 * The ways out of what is kept in the finished station, as motions that can be made: a turn where
 * it must be tipped, and one slide for each leg of a way, each begun where the one before ended. A
 * lid that must be open is open, a panel that must be off is off, and the hose is off the vac.
 */
final class ExitMotions {
  /** In the id of each such motion. */
  private static final String COMES_OUT = "-comes-out";

  /** Bodies nearer than this at rest may touch on the way, mm. */
  private static final double TOUCHING = 0.01;

  private ExitMotions() {}

  static List<Mover> of(Station station, List<Exit> exits) {
    List<Mover> movers = new ArrayList<>();
    for (Exit exit : exits) {
      if (station.part(exit.id()).isPresent()) {
        setting(station, exit).ifPresent(s -> movers.addAll(legs(station, exit, s)));
      }
    }
    return movers;
  }

  /** Whether a motion takes something out of the finished station. */
  static boolean has(Mover mover) {
    return mover.id().contains(COMES_OUT);
  }

  /** What is open and off; empty where something to be taken off is no part of its own. */
  private static Optional<Setting> setting(Station station, Exit exit) {
    Map<String, Double> open = new TreeMap<>();
    List<String> off = new ArrayList<>();
    for (String first : exit.first()) {
      Optional<Mover> mover = station.mover(first);
      if (mover.isPresent()) {
        open.put(first, mover.get().motion().to());
      } else if (station.part(first).isPresent()) {
        off.add(first);
      } else {
        return Optional.empty();
      }
    }
    if (exit.id().startsWith("vac/") && station.part("vac/hose").isPresent()) {
      off.add("vac/hose");
    }
    return Optional.of(Setting.meanwhile(open).without(off));
  }

  /**
   * The turn, if it is tipped, and then the legs; what it touches as it then stands it may touch.
   */
  private static List<Mover> legs(Station station, Exit exit, Setting setting) {
    List<Mover> made = new ArrayList<>();
    Body body = station.part(exit.id()).orElseThrow().body();
    boolean single = exit.turn().isEmpty() && exit.path().size() == 1;
    List<Motion> motions = new ArrayList<>();
    exit.turn().ifPresent(motions::add);
    exit.path().forEach(leg -> motions.add(new Slide(leg, 0, leg.length(), 0)));
    List<Contact> contacts = touching(station, body);
    Placement begun = Placement.identity();
    for (Motion motion : motions) {
      made.add(
          new Mover(
              exit.id() + COMES_OUT + (single ? "" : "-" + (made.size() + 1)),
              List.of(exit.id()),
              motion,
              contacts,
              setting.set(begun)));
      begun = motion.at(motion.to()).after(begun);
      if (motion instanceof Turn) {
        contacts = touching(station, body.moved(begun));
      }
    }
    return made;
  }

  private static List<Contact> touching(Station station, Body body) {
    List<Contact> contacts = new ArrayList<>();
    for (Part part : station.parts().values()) {
      Body other = part.body();
      if (!part.id().equals(body.id())
          && body.box().distance(other.box()) < TOUCHING
          && Distance.between(body, other).value() < TOUCHING) {
        contacts.add(new Contact(body.id(), part.id()));
      }
    }
    return contacts;
  }
}
