package sawstead.solid;

/**
 * Distance of two convex pieces by the method of E. Gilbert, D. Johnson and S. Keerthi, "A fast
 * procedure for computing the distance between complex objects in three-dimensional space" (1988):
 * the point nearest to the origin of the Minkowski difference, approached by simplices.
 *
 * <p>Certified: each step knows a lower bound (the plane through the furthest corner against the
 * present direction), and the search ends when bound and distance differ by no more than {@link
 * #GAP}; if rounding keeps it from getting there, all features are compared instead. One instance
 * serves one thread.
 */
final class Gjk {
  /** Greatest difference between distance and lower bound at the end, mm. */
  static final double GAP = 1e-8;

  /** Nearer than this, mm, two pieces touch: the rounding of coordinates of 100 m. */
  static final double TOUCHING = 1e-9;

  private static final int MOST_STEPS = 200;
  private static final double STOPPED = -1;

  private final Simplex simplex = new Simplex();
  private final double[] onFirst = new double[3];
  private final double[] onSecond = new double[3];
  private double bound;

  /**
   * Distance, or a lower bound that is no less than {@code enough}.
   *
   * @param enough the search may end once the distance is known to be no less than this, mm
   * @return distance, mm; 0 when the pieces touch or overlap
   */
  double distance(Piece a, Piece b, double enough) {
    double distance = approach(a.points, b.points, enough);
    return distance < 0 ? FeatureDistance.between(a, b, onFirst, onSecond) : distance;
  }

  /**
   * Distance of the convex hulls of two sets of points, or a lower bound of it: the distance where
   * it is certified, else the best bound, which rounding can hold below the distance.
   *
   * @param enough the search may end once the distance is known to be no less than this, mm
   */
  double atLeast(double[] p, double[] q, double enough) {
    double distance = approach(p, q, enough);
    return distance < 0 ? bound : distance;
  }

  /** Distance or bound as {@link #distance}; negative if rounding stopped the search before. */
  private double approach(double[] p, double[] q, double enough) {
    simplex.restart();
    simplex.add(0, 0, p[0] - q[0], p[1] - q[1], p[2] - q[2]);
    simplex.reduce();
    double[] v = simplex.nearest();
    double length = Simplex.length(v);
    bound = 0;
    for (int step = 0; step < MOST_STEPS && length > TOUCHING; step++) {
      int i = furthest(p, -v[0], -v[1], -v[2]);
      int j = furthest(q, v[0], v[1], v[2]);
      double x = p[i] - q[j];
      double y = p[i + 1] - q[j + 1];
      double z = p[i + 2] - q[j + 2];
      bound = Math.max(bound, (v[0] * x + v[1] * y + v[2] * z) / length);
      if (bound >= enough) {
        return bound;
      }
      if (length - bound <= GAP) {
        return settled(p, q, length);
      }
      if (!simplex.add(i, j, x, y, z)) {
        break;
      }
      simplex.reduce();
      double then = Simplex.length(v);
      if (then >= length) {
        break;
      }
      length = then;
    }
    return length <= TOUCHING ? settled(p, q, 0) : STOPPED;
  }

  private double settled(double[] p, double[] q, double length) {
    simplex.blend(p, true, onFirst);
    simplex.blend(q, false, onSecond);
    return length;
  }

  /** Nearest point of the first piece, mm; valid after a distance below {@code enough}. */
  Vec onFirst() {
    return new Vec(onFirst[0], onFirst[1], onFirst[2]);
  }

  /** Nearest point of the second piece, mm; valid after a distance below {@code enough}. */
  Vec onSecond() {
    return new Vec(onSecond[0], onSecond[1], onSecond[2]);
  }

  /** Offset in the array of the corner furthest along a direction. */
  private static int furthest(double[] p, double x, double y, double z) {
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < p.length; i += 3) {
      double d = x * p[i] + y * p[i + 1] + z * p[i + 2];
      if (d > most) {
        most = d;
        best = i;
      }
    }
    return best;
  }
}
