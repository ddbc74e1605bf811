package sawstead.solid;

/**
 * How far one convex piece must be moved to leave another, over all directions.
 *
 * <p>The least translation is square to a face of the Minkowski difference, whose faces are square
 * to a face of either piece or to an edge of each (S. Cameron and R. Culley, "Determining the
 * minimum translational distance between two convex polyhedra", 1986). All of those are tried, so
 * the least is exact.
 */
final class Penetration {
  /** Below this sine two edges count as parallel; their faces' normals then stand for them. */
  private static final double PARALLEL = 1e-9;

  private Penetration() {}

  static boolean boxesOverlap(Piece a, Piece b, double gap) {
    double[] p = a.box;
    double[] q = b.box;
    return p[0] - gap <= q[3]
        && q[0] - gap <= p[3]
        && p[1] - gap <= q[4]
        && q[1] - gap <= p[4]
        && p[2] - gap <= q[5]
        && q[2] - gap <= p[5];
  }

  /**
   * Least translation that separates two pieces, mm.
   *
   * @param enough the search ends as soon as the answer is known to be no more than this
   * @return the depth if it is more than {@code enough}, else any number up to {@code enough}
   */
  static double depth(Piece a, Piece b, double enough) {
    double least = faceDepth(a, b, enough, Double.POSITIVE_INFINITY);
    if (least > enough) {
      least = faceDepth(b, a, enough, least);
    }
    if (least > enough) {
      least = edgeDepth(a, b, enough, least);
    }
    return least;
  }

  private static double faceDepth(Piece a, Piece b, double enough, double least) {
    double[] n = a.planes;
    for (int f = 0; f < n.length && least > enough; f += 4) {
      double low = Double.POSITIVE_INFINITY;
      double[] p = b.points;
      for (int i = 0; i < p.length; i += 3) {
        low = Math.min(low, n[f] * p[i] + n[f + 1] * p[i + 1] + n[f + 2] * p[i + 2]);
      }
      least = Math.min(least, n[f + 3] - low);
    }
    return least;
  }

  private static double edgeDepth(Piece a, Piece b, double enough, double best) {
    double least = best;
    double[] e = a.edges;
    double[] g = b.edges;
    for (int i = 0; i < e.length && least > enough; i += 3) {
      for (int j = 0; j < g.length && least > enough; j += 3) {
        double x = e[i + 1] * g[j + 2] - e[i + 2] * g[j + 1];
        double y = e[i + 2] * g[j] - e[i] * g[j + 2];
        double z = e[i] * g[j + 1] - e[i + 1] * g[j];
        double length = Math.sqrt(x * x + y * y + z * z);
        if (length > PARALLEL) {
          least = Math.min(least, along(a, b, x / length, y / length, z / length, least));
        }
      }
    }
    return least;
  }

  /** Translation along one direction, either way, that separates the pieces. */
  private static double along(Piece a, Piece b, double x, double y, double z, double least) {
    double lowA = Double.POSITIVE_INFINITY;
    double highA = Double.NEGATIVE_INFINITY;
    double[] p = a.points;
    for (int i = 0; i < p.length; i += 3) {
      double d = x * p[i] + y * p[i + 1] + z * p[i + 2];
      lowA = Math.min(lowA, d);
      highA = Math.max(highA, d);
    }
    double lowB = Double.POSITIVE_INFINITY;
    double highB = Double.NEGATIVE_INFINITY;
    p = b.points;
    for (int i = 0; i < p.length; i += 3) {
      double d = x * p[i] + y * p[i + 1] + z * p[i + 2];
      lowB = Math.min(lowB, d);
      highB = Math.max(highB, d);
      if (highA - lowB >= least && highB - lowA >= least) {
        return least;
      }
    }
    return Math.min(highA - lowB, highB - lowA);
  }
}
