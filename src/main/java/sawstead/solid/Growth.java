package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Grows convex regions around seeds within all columns that have material throughout a run of
 * levels.
 *
 * <p>The region starts as the bounds of those columns. Border edges that the seed sees from inside,
 * nearest first, cut it along their own line if they still reach into it; the others cut it along
 * whichever separating line leaves most. Two disjoint convex sets of the plane always have a
 * separating line along an edge of one of them, so no border edge remains inside, and the region
 * lies in the material.
 */
final class Growth {
  private static final double BESIDE = 1e-9;

  /** Halvings of a seed before a thin piece is accepted. */
  private static final int HALVINGS = 5;

  private final double[] borders;
  private final double[] bounds = {
    Double.POSITIVE_INFINITY,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  Growth(Plan plan, int first, int last) {
    double[] found = new double[4 * plan.triangles().length];
    int n = 0;
    for (int h = 0; h < plan.triangles().length; h++) {
      if (isFull(plan, h / 3, first, last)) {
        int a = plan.triangles()[h];
        int b = plan.triangles()[Plan.next(h)];
        bounds[0] = Math.min(bounds[0], plan.u(a));
        bounds[1] = Math.min(bounds[1], plan.v(a));
        bounds[2] = Math.max(bounds[2], plan.u(a));
        bounds[3] = Math.max(bounds[3], plan.v(a));
        int twin = plan.twins()[h];
        if (twin < 0 || !isFull(plan, twin / 3, first, last)) {
          found[n++] = plan.u(a);
          found[n++] = plan.v(a);
          found[n++] = plan.u(b);
          found[n++] = plan.v(b);
        }
      }
    }
    borders = Arrays.copyOf(found, n);
  }

  private static boolean isFull(Plan plan, int t, int first, int last) {
    return plan.columns().get(t).nextClearBit(first) >= last;
  }

  /** The three corners of a triangle: u, v each. */
  static double[] seed(Plan plan, int t) {
    double[] seed = new double[6];
    for (int k = 0; k < 3; k++) {
      seed[2 * k] = plan.u(plan.triangles()[3 * t + k]);
      seed[2 * k + 1] = plan.v(plan.triangles()[3 * t + k]);
    }
    return seed;
  }

  static boolean holds(Wedge wedge, Plan plan, int t) {
    for (int k = 0; k < 3; k++) {
      int vertex = plan.triangles()[3 * t + k];
      if (!wedge.holds(plan.u(vertex), plan.v(vertex), Cover.SLACK)) {
        return false;
      }
    }
    return true;
  }

  /** The least distance between parallel lines around a region, mm. */
  static double width(Wedge wedge) {
    double[] ring = wedge.corners(Slabs.GRID);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.length; i += 5) {
      double far = 0;
      for (int j = 0; j < ring.length; j += 5) {
        far = Math.max(far, ring[i + 4] - ring[i + 2] * ring[j] - ring[i + 3] * ring[j + 1]);
      }
      least = Math.min(least, far);
    }
    return ring.length < 15 ? 0 : least;
  }

  /** A large convex region of material around a seed triangle. */
  Wedge around(double[] seed) {
    int[] order =
        nearestFirst((seed[0] + seed[2] + seed[4]) / 3, (seed[1] + seed[3] + seed[5]) / 3);
    Wedge wedge = new Wedge(bounds[0], bounds[1], bounds[2], bounds[3]);
    for (int i : order) {
      if (isEntered(wedge, i) && least(seed, i) >= -BESIDE) {
        cutAlong(wedge, i, 1);
      }
    }
    for (int i : order) {
      if (isEntered(wedge, i)) {
        cutBetween(wedge, seed, i);
      }
    }
    return wedge;
  }

  /** Border edges by their distance from a point; as whole numbers, which sort without boxes. */
  private int[] nearestFirst(double u, double v) {
    long[] keys = new long[borders.length / 4];
    for (int i = 0; i < keys.length; i++) {
      // The bits of positive floats sort as the floats do.
      keys[i] = (long) Float.floatToIntBits((float) squareDistance(u, v, 4 * i)) << 32 | 4L * i;
    }
    Arrays.sort(keys);
    int[] order = new int[keys.length];
    for (int i = 0; i < keys.length; i++) {
      order[i] = (int) keys[i];
    }
    return order;
  }

  /**
   * Regions around parts of a seed, halved until they are wide enough.
   *
   * @return true if the whole seed is covered by wide ones
   */
  boolean aroundParts(double[] seed, double width, List<Wedge> found) {
    return aroundParts(seed, width, found, HALVINGS);
  }

  private boolean aroundParts(double[] seed, double width, List<Wedge> found, int halvings) {
    Wedge wedge = around(seed);
    if (width(wedge) >= width) {
      found.add(wedge);
      return true;
    }
    if (halvings == 0) {
      return false;
    }
    List<Wedge> parts = new ArrayList<>();
    boolean whole = true;
    for (double[] half : halves(seed)) {
      whole &= aroundParts(half, width, parts, halvings - 1);
    }
    found.addAll(parts);
    return whole;
  }

  private static List<double[]> halves(double[] s) {
    int longest = 0;
    double most = 0;
    for (int k = 0; k < 3; k++) {
      int n = (k + 1) % 3;
      double length = Math.hypot(s[2 * n] - s[2 * k], s[2 * n + 1] - s[2 * k + 1]);
      if (length > most) {
        most = length;
        longest = k;
      }
    }
    int a = 2 * longest;
    int b = 2 * ((longest + 1) % 3);
    int c = 2 * ((longest + 2) % 3);
    double mu = (s[a] + s[b]) / 2;
    double mv = (s[a + 1] + s[b + 1]) / 2;
    return List.of(
        new double[] {s[a], s[a + 1], mu, mv, s[c], s[c + 1]},
        new double[] {mu, mv, s[b], s[b + 1], s[c], s[c + 1]});
  }

  private boolean isEntered(Wedge wedge, int i) {
    return wedge.isEntered(borders[i], borders[i + 1], borders[i + 2], borders[i + 3], Cover.SLACK);
  }

  /** Least distance of the seed's corners to the left of a border edge. */
  private double least(double[] seed, int i) {
    return Math.min(left(seed, 0, i), Math.min(left(seed, 2, i), left(seed, 4, i)));
  }

  private double left(double[] p, int at, int i) {
    double du = borders[i + 2] - borders[i];
    double dv = borders[i + 3] - borders[i + 1];
    double cross = du * (p[at + 1] - borders[i + 1]) - dv * (p[at] - borders[i]);
    return cross / Math.hypot(du, dv);
  }

  private void cutAlong(Wedge wedge, int i, int side) {
    double du = borders[i + 2] - borders[i];
    double dv = borders[i + 3] - borders[i + 1];
    double length = side * Math.hypot(du, dv);
    double nu = dv / length;
    double nv = -du / length;
    wedge.cut(nu, nv, nu * borders[i] + nv * borders[i + 1]);
  }

  private void cutBetween(Wedge wedge, double[] seed, int i) {
    double best = -BESIDE;
    double[] cut = null;
    for (int k = 0; k < 3; k++) {
      int a = 2 * k;
      int b = 2 * ((k + 1) % 3);
      double du = seed[b] - seed[a];
      double dv = seed[b + 1] - seed[a + 1];
      double length = Math.hypot(du, dv);
      double nu = dv / length;
      double nv = -du / length;
      double c =
          Math.min(
              nu * borders[i] + nv * borders[i + 1], nu * borders[i + 2] + nv * borders[i + 3]);
      double gap = c - (nu * seed[a] + nv * seed[a + 1]);
      if (gap > best) {
        best = gap;
        cut = new double[] {nu, nv, c};
      }
    }
    double behind = -Math.max(left(seed, 0, i), Math.max(left(seed, 2, i), left(seed, 4, i)));
    if (behind > best || cut == null) {
      cutAlong(wedge, i, -1);
    } else {
      wedge.cut(cut[0], cut[1], cut[2]);
    }
  }

  private double squareDistance(double u, double v, int i) {
    double du = borders[i + 2] - borders[i];
    double dv = borders[i + 3] - borders[i + 1];
    double t = ((u - borders[i]) * du + (v - borders[i + 1]) * dv) / (du * du + dv * dv);
    t = Math.max(0, Math.min(1, t));
    double pu = u - borders[i] - t * du;
    double pv = v - borders[i + 1] - t * dv;
    return pu * pu + pv * pv;
  }
}
