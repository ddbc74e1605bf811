package sawstead.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Distance of bodies: pairs of pieces in the order of their boxes' distance, until no box is nearer
 * than the best pair. Round holes are filled at first; if the nearest points then lie on the true
 * bodies too, filling changed nothing.
 */
final class DistancePairs {
  /** How exactly a point must lie on a body to be a point of it, mm. */
  private static final double ON = 1e-7;

  private static final ThreadLocal<Gjk> GJK = ThreadLocal.withInitial(Gjk::new);

  private record Pair(Piece a, Piece b, double boxes) {}

  private DistancePairs() {}

  static Distance between(Body a, Body b) {
    Distance filled = nearest(a.filled(), b.filled());
    if (!a.hasRoundHoles() && !b.hasRoundHoles()) {
      return filled;
    }
    if (filled.value() > 0 && a.contains(filled.onA(), ON) && b.contains(filled.onB(), ON)) {
      return filled;
    }
    return nearest(a.cover(), b.cover());
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
