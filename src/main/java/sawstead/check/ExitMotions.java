package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.assembly.Exit;
import sawstead.solid.Body;
import sawstead.solid.Distance;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Setting;
import sawstead.station.Station;

/**
 * The ways out of what is kept in the finished station, as motions that can be made: one slide for
 * each leg of a way, begun where the one before ended. A lid that must be open is open, a panel
 * that must be off is off, and the hose is off the vac. A way that is tilted has no motion.
 */
final class ExitMotions {
  /** In the id of each such motion. */
  static final String COMES_OUT = "-comes-out";

  /** Bodies nearer than this at rest may touch on the way, mm. */
  private static final double TOUCHING = 0.01;

  private ExitMotions() {}

  static List<Mover> of(Station station, List<Exit> exits) {
    List<Mover> movers = new ArrayList<>();
    for (Exit exit : exits) {
      if (exit.tilt() == 0 && station.part(exit.id()).isPresent()) {
        setting(station, exit).ifPresent(s -> movers.addAll(legs(station, exit, s)));
      }
    }
    return movers;
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

  private static List<Mover> legs(Station station, Exit exit, Setting setting) {
    List<Mover> legs = new ArrayList<>();
    List<Contact> contacts = touching(station, exit.id());
    Vec begun = Vec.ZERO;
    for (Vec leg : exit.path()) {
      String number = exit.path().size() == 1 ? "" : "-" + (legs.size() + 1);
      legs.add(
          new Mover(
              exit.id() + COMES_OUT + number,
              List.of(exit.id()),
              new Slide(leg, 0, leg.length(), 0),
              contacts,
              setting.set(Placement.at(begun))));
      begun = begun.plus(leg);
    }
    return legs;
  }

  private static List<Contact> touching(Station station, String id) {
    Body body = station.part(id).orElseThrow().body();
    List<Contact> contacts = new ArrayList<>();
    for (Part part : station.parts().values()) {
      Body other = part.body();
      if (!part.id().equals(id)
          && body.box().distance(other.box()) < TOUCHING
          && Distance.between(body, other).value() < TOUCHING) {
        contacts.add(new Contact(id, part.id()));
      }
    }
    return contacts;
  }
}
