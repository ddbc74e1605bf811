package sawstead.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Contact;
import sawstead.solid.Distance;
import sawstead.solid.FreeWay;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Sweep;
import sawstead.solid.Vec;

/** The way of some bodies out of others that stand on the floor: straight, else by a chain. */
final class Way {
  /** Bodies nearer than this at rest are meant to touch, mm. */
  private static final double TOUCHING = 0.01;

  /** Room between the bodies and what they left, mm. */
  private static final double OUT = 20;

  private final Stage stage;
  private final List<Body> movers;
  private final Box box;

  /**
   * What was found.
   *
   * @param path translations, mm; empty when none
   * @param decided false when there may be one
   */
  record Found(Optional<List<Vec>> path, boolean decided) {}

  Way(Stage stage, List<Body> movers) {
    this.stage = stage;
    this.movers = movers;
    box = movers.stream().map(Body::box).reduce(Box::union).orElseThrow();
  }

  Found out(List<Body> others) {
    if (others.isEmpty()) {
      return new Found(Optional.of(List.of(Exits.DIRECTIONS.get(0).scale(OUT))), true);
    }
    for (Vec direction : Exits.DIRECTIONS) {
      if (isFree(direction, others)) {
        return new Found(Optional.of(List.of(direction.scale(length(direction, others)))), true);
      }
    }
    PathSearch.Verdict verdict = PathSearch.among(movers, others, stage.play(), true);
    return new Found(verdict.path(), verdict.decided());
  }

  private boolean isFree(Vec direction, List<Body> others) {
    for (Body mover : movers) {
      for (Body other : others) {
        if (FreeWay.of(mover, direction, other, stage.play(), Blocking.FAR) <= Blocking.FAR) {
          return false;
        }
      }
    }
    return true;
  }

  /** How far along a direction the bodies are outside of the box around the others, mm. */
  private double length(Vec direction, List<Body> others) {
    Box around = others.stream().map(Body::box).reduce(Box::union).orElseThrow();
    Vec far =
        new Vec(
            direction.x() > 0
                ? around.high().x() - box.low().x()
                : box.high().x() - around.low().x(),
            direction.y() > 0
                ? around.high().y() - box.low().y()
                : box.high().y() - around.low().y(),
            around.high().z() - box.low().z());
    double length =
        Math.abs(direction.x()) * far.x()
            + Math.abs(direction.y()) * far.y()
            + Math.abs(direction.z()) * far.z();
    return Math.max(0, length) + OUT;
  }

  /**
   * The least distance on a path to what is not touched at rest, mm; infinite when there is
   * nothing. Certified by the kernel's sweep.
   */
  double clearance(List<Vec> path, List<Body> others) {
    Set<Contact> contacts = new HashSet<>();
    for (Body mover : movers) {
      for (Body other : others) {
        if (mover.box().distance(other.box()) < TOUCHING
            && Distance.between(mover, other).value() < TOUCHING) {
          contacts.add(new Contact(mover.id(), other.id()));
        }
      }
    }
    double least = Double.POSITIVE_INFINITY;
    Vec at = Vec.ZERO;
    for (Vec leg : path) {
      List<Body> there = new ArrayList<>();
      for (Body mover : movers) {
        there.add(mover.moved(Placement.at(at)));
      }
      OptionalDouble found =
          Sweep.of(new Slide(leg, 0, leg.length(), 0), there, others, contacts, 2 * stage.play())
              .leastClearance();
      least = Math.min(least, found.orElse(Double.POSITIVE_INFINITY));
      at = at.plus(leg);
    }
    return least;
  }
}
