package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Distance of bodies: pairs of pieces in the order of their boxes' distance, until no box is nearer
 * than the best pair. Round holes are filled at first, and opened where the nearest points lie in
 * one: filling makes no distance greater, so an answer that no filled hole takes part in is true.
 */
final class DistancePairs {
  /** How near a hole's box a point counts as in it, mm. */
  private static final double ON = 1e-7;

  private static final ThreadLocal<Gjk> GJK = ThreadLocal.withInitial(Gjk::new);

  private record Pair(Piece a, Piece b, double boxes) {}

  private DistancePairs() {}

  static Distance between(Body a, Body b) {
    BitSet openInA = new BitSet();
    BitSet openInB = new BitSet();
    while (true) {
      Distance found = nearest(a.cover(openInA), b.cover(openInB));
      boolean more = openAround(a, found, found.onA(), b, openInA);
      more |= openAround(b, found, found.onB(), a, openInB);
      if (!more) {
        return found;
      }
    }
  }

  /** Opens the holes that the answer may owe to their filling; false if all of them are open. */
  private static boolean openAround(Body of, Distance found, Vec at, Body other, BitSet open) {
    BitSet wanted =
        found.value() > 0
            ? of.holes(hole -> hole.contains(at, ON))
            : of.holes(hole -> hole.box().overlaps(other.reach(), 0));
    wanted.andNot(open);
    open.or(wanted);
    return !wanted.isEmpty();
  }

  static Distance nearest(Piece[] as, Piece[] bs) {
    List<Pair> pairs = new ArrayList<>();
    for (Piece a : as) {
      for (Piece b : bs) {
        pairs.add(new Pair(a, b, a.box().distance(b.box())));
      }
    }
    pairs.sort(Comparator.comparingDouble(Pair::boxes));
    Gjk gjk = GJK.get();
    double least = Double.POSITIVE_INFINITY;
    Vec onA = null;
    Vec onB = null;
    for (Pair pair : pairs) {
      if (pair.boxes >= least || least == 0) {
        break;
      }
      double distance = gjk.distance(pair.a, pair.b, least);
      if (distance < least) {
        least = distance;
        onA = gjk.onFirst();
        onB = gjk.onSecond();
      }
    }
    return new Distance(least, onA, onB);
  }
}
