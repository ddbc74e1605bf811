package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * Finds overlaps: boxes, then covers with round holes filled, then with those open that the other
 * body may reach, then volumes.
 */
final class OverlapPairs {
  private static final ThreadLocal<Clipper> CLIPPER = ThreadLocal.withInitial(Clipper::new);

  private OverlapPairs() {}

  static Optional<Overlap> between(Body a, Body b, double tolerance) {
    if (!a.reach().overlaps(b.reach(), 0)) {
      return Optional.empty();
    }
    double floor = Math.max(tolerance, Overlap.TOUCH);
    double depth = deepest(a.filled(), b.filled(), floor);
    if (depth > floor) {
      BitSet holesOfA = a.holes(b::isMetBy);
      BitSet holesOfB = b.holes(a::isMetBy);
      if (!holesOfA.isEmpty() || !holesOfB.isEmpty()) {
        depth = deepest(a.cover(holesOfA), b.cover(holesOfB), floor);
      }
    }
    return depth > floor ? measured(a, b, depth) : Optional.empty();
  }

  /** The greatest depth over all pairs of pieces, or no more than the floor if none is deeper. */
  static double deepest(Piece[] as, Piece[] bs, double floor) {
    double most = floor;
    for (Piece a : as) {
      for (Piece b : bs) {
        if (Penetration.boxesOverlap(a, b, 0)) {
          most = Math.max(most, Penetration.depth(a, b, most));
        }
      }
    }
    return most;
  }

  private static Optional<Overlap> measured(Body a, Body b, double depth) {
    double[] sums = new double[4];
    Clipper clipper = CLIPPER.get();
    for (Piece p : a.partition()) {
      for (Piece q : b.partition()) {
        if (Penetration.boxesOverlap(p, q, 0)) {
          clipper.addShared(p, q, sums);
        }
      }
    }
    if (!(sums[0] > 0)) {
      return Optional.empty();
    }
    Vec centroid = new Vec(sums[1] / sums[0], sums[2] / sums[0], sums[3] / sums[0]);
    return Optional.of(new Overlap(a, b, sums[0], depth, centroid));
  }

  /** Sweep and prune along x over the bodies' boxes, then each pair that is left. */
  static List<Overlap> among(List<Body> bodies, double tolerance, BiPredicate<Body, Body> skip) {
    List<int[]> pairs = BoxSweep.pairs(bodies.stream().map(Body::reach).toList(), 0);
    pairs.sort(Comparator.<int[]>comparingInt(p -> p[0]).thenComparingInt(p -> p[1]));
    List<Overlap> found = new ArrayList<>();
    for (int[] pair : pairs) {
      Body a = bodies.get(pair[0]);
      Body b = bodies.get(pair[1]);
      if (!skip.test(a, b)) {
        between(a, b, tolerance).ifPresent(found::add);
      }
    }
    return found;
  }
}
