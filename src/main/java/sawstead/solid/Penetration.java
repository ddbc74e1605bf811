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
  static final double PARALLEL = 1e-9;

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
    return depth(a, b, enough, new double[3]);
  }

  /**
   * As above, and the unit direction n in which b would have to leave a: the depth is what a
   * reaches along n beyond where b begins. Negative when n separates the pieces.
   *
   * @param n set to the direction
   */
  static double depth(Piece a, Piece b, double enough, double[] n) {
    double least = faceDepth(a, b, 1, enough, Double.POSITIVE_INFINITY, n);
    if (least > enough) {
      least = faceDepth(b, a, -1, enough, least, n);
    }
    if (least > enough) {
      least = edgeDepth(a, b, enough, least, n);
    }
    return least;
  }

  private static double faceDepth(
      Piece a, Piece b, int sign, double enough, double best, double[] to) {
    double least = best;
    double[] n = a.planes;
    for (int f = 0; f < n.length && least > enough; f += 4) {
      double reach = n[f + 3] - lowest(b.points, n[f], n[f + 1], n[f + 2]);
      if (reach < least) {
        least = reach;
        to[0] = sign * n[f];
        to[1] = sign * n[f + 1];
        to[2] = sign * n[f + 2];
      }
    }
    return least;
  }

  private static double edgeDepth(Piece a, Piece b, double enough, double best, double[] to) {
    double least = best;
    double[] e = a.edges;
    double[] g = b.edges;
    // The edges around two prisms on one axis all cross in the direction of that axis.
    double[] last = new double[3];
    double[][] spans = new double[2][2];
    for (int i = 0; i < e.length && least > enough; i += 3) {
      for (int j = 0; j < g.length && least > enough; j += 3) {
        double x = e[i + 1] * g[j + 2] - e[i + 2] * g[j + 1];
        double y = e[i + 2] * g[j] - e[i] * g[j + 2];
        double z = e[i] * g[j + 1] - e[i + 1] * g[j];
        double length = Math.sqrt(x * x + y * y + z * z);
        if (length > PARALLEL && !isAlong(last, x / length, y / length, z / length)) {
          last[0] = x / length;
          last[1] = y / length;
          last[2] = z / length;
          least = along(a, b, last, spans, least, to);
        }
      }
    }
    return least;
  }

  /** True if two unit directions are the same up to sign. */
  static boolean isAlong(double[] n, double x, double y, double z) {
    double cx = n[1] * z - n[2] * y;
    double cy = n[2] * x - n[0] * z;
    double cz = n[0] * y - n[1] * x;
    double dot = n[0] * x + n[1] * y + n[2] * z;
    return cx * cx + cy * cy + cz * cz < PARALLEL * PARALLEL && Math.abs(dot) > 0.5;
  }

  /** The lesser of a translation along one direction, either way, and the least so far. */
  private static double along(
      Piece a, Piece b, double[] n, double[][] spans, double least, double[] to) {
    a.span(n[0], n[1], n[2], spans[0]);
    b.span(n[0], n[1], n[2], spans[1]);
    double forth = spans[0][1] - spans[1][0];
    double back = spans[1][1] - spans[0][0];
    if (Math.min(forth, back) >= least) {
      return least;
    }
    int sign = forth <= back ? 1 : -1;
    to[0] = sign * n[0];
    to[1] = sign * n[1];
    to[2] = sign * n[2];
    return Math.min(forth, back);
  }

  /** The least of n . p over points. */
  static double lowest(double[] p, double x, double y, double z) {
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i < p.length; i += 3) {
      low = Math.min(low, x * p[i] + y * p[i + 1] + z * p[i + 2]);
    }
    return low;
  }
}
