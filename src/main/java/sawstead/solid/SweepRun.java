package sawstead.solid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Takes a motion over all pairs of movers and obstacles, round holes filled at first. */
final class SweepRun {
  private final Motion motion;
  private final Set<Contact> contacts;
  private final PairSweep pairs;
  private double first = PairSweep.NONE;
  private Sweep.FirstContact contact;
  private double clearance = Double.POSITIVE_INFINITY;
  private boolean hasFreePairs;

  SweepRun(Motion motion, Set<Contact> contacts, double tolerance) {
    this.motion = motion;
    this.contacts = Set.copyOf(contacts);
    this.pairs = motion.sweep(tolerance);
  }

  Sweep over(List<Body> movers, List<Body> obstacles) {
    for (Body mover : movers) {
      for (Body obstacle : obstacles) {
        pair(mover, obstacle);
      }
    }
    OptionalDouble least = OptionalDouble.empty();
    if (hasFreePairs) {
      least = OptionalDouble.of(contact == null ? clearance : 0);
    }
    return new Sweep(motion, Optional.ofNullable(contact), least, pairs.evaluations());
  }

  private void pair(Body mover, Body obstacle) {
    boolean declared = contacts.contains(new Contact(mover.id(), obstacle.id()));
    boolean round = mover.hasRoundHoles() || obstacle.hasRoundHoles();
    double at = pairs.firstContact(mover.filled(), obstacle.filled(), declared);
    if (at < PairSweep.NONE && round) {
      at = pairs.firstContact(mover.cover(), obstacle.cover(), declared);
    }
    if (at < first) {
      first = at;
      contact =
          new Sweep.FirstContact(
              mover.id(), obstacle.id(), parameter(at), meeting(mover, obstacle, pairs.deepAt()));
    }
    if (!declared) {
      hasFreePairs = true;
      if (contact == null && clearance > 0) {
        double least = pairs.leastDistance(mover.filled(), obstacle.filled(), clearance);
        if (least < clearance && round) {
          least = pairs.leastDistance(mover.cover(), obstacle.cover(), clearance);
        }
        clearance = Math.min(clearance, least);
      }
    }
  }

  private double parameter(double progress) {
    double end = Math.abs(motion.to() - motion.from());
    return progress >= end
        ? motion.to()
        : motion.from() + Math.signum(motion.to() - motion.from()) * progress;
  }

  private Vec meeting(Body mover, Body obstacle, double deepAt) {
    Body there = mover.moved(motion.at(parameter(deepAt)));
    return Overlap.between(there, obstacle)
        .map(Overlap::centroid)
        .orElseGet(() -> Distance.between(there, obstacle).onA());
  }
}
