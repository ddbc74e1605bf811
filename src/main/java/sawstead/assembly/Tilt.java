package sawstead.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Contact;
import sawstead.solid.Sweep;
import sawstead.solid.Turn;
import sawstead.solid.Vec;

/**
 * Bodies tipped about one of their lower edges, as far as they can be tipped where they stand.
 *
 * @param turn that tips them, from 0
 * @param bodies as they are then
 */
record Tilt(Turn turn, List<Body> bodies) {
  /** Greatest tilt of something that may hold dust, degrees (common practice, no source). */
  static final double MOST = 20;

  private static final double STEP = 5;

  Tilt {
    bodies = List.copyOf(bodies);
  }

  /** All tilts that are free on the way, the least first. */
  static List<Tilt> of(List<Body> movers, List<Body> others, double contact) {
    Box box = movers.stream().map(Body::box).reduce(Box::union).orElseThrow();
    Vec high = new Vec(box.high().x(), box.high().y(), box.low().z());
    Set<Contact> contacts = new HashSet<>();
    for (Body mover : movers) {
      for (Body other : others) {
        contacts.add(new Contact(mover.id(), other.id()));
      }
    }
    List<Tilt> tilts = new ArrayList<>();
    for (double degrees = STEP; degrees <= MOST; degrees += STEP) {
      List<Turn> turns =
          List.of(
              new Turn(box.low(), new Vec(1, 0, 0), 0, degrees, 0),
              new Turn(high, new Vec(-1, 0, 0), 0, degrees, 0),
              new Turn(box.low(), new Vec(0, -1, 0), 0, degrees, 0),
              new Turn(high, new Vec(0, 1, 0), 0, degrees, 0));
      for (Turn turn : turns) {
        if (Sweep.of(turn, movers, others, contacts, contact).firstContact().isEmpty()) {
          tilts.add(new Tilt(turn, movers.stream().map(b -> b.moved(turn.at(turn.to()))).toList()));
        }
      }
    }
    return tilts;
  }

  /**
   * A way out of something that is tipped first.
   *
   * @param turn that tips it where it stands, from 0
   * @param legs translations after it, mm
   * @param bodies as they are tipped, before the first leg
   */
  record Out(Turn turn, List<Vec> legs, List<Body> bodies) {
    public Out {
      legs = List.copyOf(legs);
      bodies = List.copyOf(bodies);
    }

    /** How far it is tipped. */
    double degrees() {
      return turn.to();
    }
  }

  /** The way out with the least tilt, if one was found. */
  static Optional<Out> out(Stage stage, List<Body> movers, List<Body> others) {
    for (Tilt tilt : of(movers, others, 2 * stage.play())) {
      Optional<List<Vec>> path = new Way(stage, tilt.bodies()).out(others).path();
      if (path.isPresent()) {
        return Optional.of(new Out(tilt.turn(), path.get(), tilt.bodies()));
      }
    }
    return Optional.empty();
  }
}
