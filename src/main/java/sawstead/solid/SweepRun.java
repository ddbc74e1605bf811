package sawstead.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Takes a motion over all pairs of movers and obstacles, round holes filled at first. */
final class SweepRun {
  /** Boxes further apart than this do not meet, whatever was rounded, mm. */
  private static final double BESIDE = 1e-6;

  private final Motion motion;
  private final Set<Contact> contacts;
  private final PairSweep pairs;
  private double first = PairSweep.NONE;
  private Sweep.FirstContact contact;
  private double clearance = Double.POSITIVE_INFINITY;
  private boolean hasFreePairs;

  /** All that the mover looked at now passes. */
  private Box passed;

  SweepRun(Motion motion, Set<Contact> contacts, double tolerance) {
    this.motion = motion;
    this.contacts = Set.copyOf(contacts);
    this.pairs = motion.sweep(tolerance);
  }

  Sweep over(List<Body> movers, List<Body> obstacles) {
    for (Body mover : movers) {
      // The nearest first: the clearance to them leaves little to do for those further away.
      passed = pairs.passed(mover.reach());
      List<Body> nearestFirst = new ArrayList<>(obstacles);
      nearestFirst.sort(Comparator.comparingDouble(o -> passed.distance(o.reach())));
      for (Body obstacle : nearestFirst) {
        pair(mover, obstacle, passed.distance(obstacle.reach()));
      }
    }
    OptionalDouble least = OptionalDouble.empty();
    if (hasFreePairs) {
      least = OptionalDouble.of(contact == null ? clearance : 0);
    }
    return new Sweep(motion, Optional.ofNullable(contact), least, pairs.evaluations());
  }

  /**
   * Looks at a pair.
   *
   * @param apart how far the obstacle is, at least, from all that the mover passes
   */
  private void pair(Body mover, Body obstacle, double apart) {
    boolean declared = contacts.contains(new Contact(mover.id(), obstacle.id()));
    hasFreePairs |= !declared;
    if (apart > BESIDE && apart >= clearance) {
      return;
    }
    double at =
        apart > BESIDE
            ? PairSweep.NONE
            : pairs.firstContact(mover.filled(), obstacle.filled(), declared);
    if (at < PairSweep.NONE && hasHolesNear(mover, obstacle, 0)) {
      at = pairs.firstContact(open(mover, obstacle, 0), opened(obstacle, 0), declared);
    }
    if (at < first) {
      first = at;
      contact =
          new Sweep.FirstContact(
              mover.id(), obstacle.id(), parameter(at), meeting(mover, obstacle, pairs.deepAt()));
    }
    if (!declared && contact == null && clearance > 0) {
      clear(mover, obstacle);
    }
  }

  private void clear(Body mover, Body obstacle) {
    double least = pairs.leastDistance(mover.filled(), obstacle.filled(), clearance);
    if (least >= clearance) {
      return;
    }
    // What the true bodies attain at the start bounds how far away a hole can still matter.
    Body started = mover.moved(motion.at(motion.from()));
    clearance = Math.min(clearance, Distance.between(started, obstacle).value());
    if (hasHolesNear(mover, obstacle, clearance)) {
      least =
          pairs.leastDistance(
              open(mover, obstacle, clearance), opened(obstacle, clearance), clearance);
    }
    clearance = Math.min(clearance, least);
  }

  private boolean hasHolesNear(Body mover, Body obstacle, double gap) {
    return !mover.holes(hole -> passesNear(hole.box(), obstacle, gap)).isEmpty()
        || !obstacle.holes(hole -> passed.overlaps(hole.box(), gap)).isEmpty();
  }

  /** The mover with those holes open that pass near the obstacle. */
  private Piece[] open(Body mover, Body obstacle, double gap) {
    return mover.cover(hole -> passesNear(hole.box(), obstacle, gap));
  }

  /** The obstacle with those holes open that the mover passes. */
  private Piece[] opened(Body obstacle, double gap) {
    return obstacle.cover(hole -> passed.overlaps(hole.box(), gap));
  }

  private boolean passesNear(Box hole, Body obstacle, double gap) {
    return pairs.passed(hole).overlaps(obstacle.reach(), gap);
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
