package sawstead.solid;

/**
 * The least distance of a pair of pieces during a turn, by branch and bound. Over an interval the
 * distance is no less than the gap that a plane square to the line between the nearest points keeps
 * throughout, nor than the distance in the middle less the way of the furthest corner. An interval
 * that cannot improve on the best by {@link Sweep#CLEARANCE_ERROR} is dropped.
 */
final class TurnClearance {
  private final TurnSweep sweep;
  private final TurnHeights heights;
  private final Gjk gjk = new Gjk();
  private double best;
  private double radius;
  private long evaluations;

  TurnClearance(TurnSweep sweep, TurnHeights heights) {
    this.sweep = sweep;
    this.heights = heights;
  }

  long evaluations() {
    return evaluations;
  }

  /** The least distance if it is less than {@code below}, else {@code below}. */
  double least(Piece a, Piece b, double below) {
    best = below;
    radius = heights.radius(a.points);
    look(a, b, 0, 0);
    look(a, b, sweep.length(), sweep.length());
    halve(a, b, 0, sweep.length());
    return best;
  }

  private void halve(Piece a, Piece b, double s0, double s1) {
    if (best <= 0 || look(a, b, s0, s1) >= best - Sweep.CLEARANCE_ERROR) {
      return;
    }
    double middle = (s0 + s1) / 2;
    halve(a, b, s0, middle);
    halve(a, b, middle, s1);
  }

  /** Measures in the middle of an interval and returns a lower bound over all of it. */
  private double look(Piece a, Piece b, double s0, double s1) {
    evaluations++;
    double middle = (s0 + s1) / 2;
    double distance = gjk.distance(sweep.at(a, middle), b, Double.POSITIVE_INFINITY);
    best = Math.min(best, distance);
    double bound = distance - radius * Math.toRadians(s1 - s0) / 2;
    if (distance > Gjk.TOUCHING) {
      Vec apart = gjk.onSecond().minus(gjk.onFirst()).unit();
      double[] n = {apart.x(), apart.y(), apart.z()};
      bound = Math.max(bound, -sweep.worldDepth(a, b, n, s0, s1));
      bound = Math.max(bound, -sweep.moverDepth(a, b, sweep.atRest(n, middle), s0, s1));
    }
    return bound;
  }
}
