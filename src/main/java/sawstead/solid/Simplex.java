package sawstead.solid;

/**
 * Up to four corners of a Minkowski difference, and the point of their hull nearest to the origin.
 *
 * <p>The nearest point is found by trying every subset (at most fifteen) and taking the nearest of
 * those whose weights are not negative: slower than a case tree, but whatever the rounding of the
 * weights, the result is a point of the hull and so an upper bound of the distance.
 */
final class Simplex {
  private final double[] w = new double[12];
  private final int[] first = new int[4];
  private final int[] second = new int[4];
  private final double[] weights = new double[4];
  private final double[] trial = new double[4];
  private final double[] nearest = new double[3];
  private final double[] candidate = new double[3];
  private final double[] d = new double[9];
  private final double[] gram = new double[9];
  private final double[] right = new double[3];
  private final int[] members = new int[4];
  private int size;

  void restart() {
    size = 0;
  }

  /** Adds a corner, named by the array offsets of its two points; false if it is there already. */
  boolean add(int i, int j, double x, double y, double z) {
    for (int k = 0; k < size; k++) {
      if (first[k] == i && second[k] == j) {
        return false;
      }
    }
    first[size] = i;
    second[size] = j;
    w[3 * size] = x;
    w[3 * size + 1] = y;
    w[3 * size + 2] = z;
    size++;
    return true;
  }

  double[] nearest() {
    return nearest;
  }

  static double length(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  /** Keeps the corners whose hull holds the nearest point, and works that point out. */
  void reduce() {
    double least = Double.POSITIVE_INFINITY;
    int best = 0;
    for (int mask = 1; mask < 1 << size; mask++) {
      if (weigh(mask)) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int k = 0; k < size; k++) {
          x += trial[k] * w[3 * k];
          y += trial[k] * w[3 * k + 1];
          z += trial[k] * w[3 * k + 2];
        }
        double square = x * x + y * y + z * z;
        if (square < least) {
          least = square;
          best = mask;
          System.arraycopy(trial, 0, weights, 0, 4);
          candidate[0] = x;
          candidate[1] = y;
          candidate[2] = z;
        }
      }
    }
    System.arraycopy(candidate, 0, nearest, 0, 3);
    int kept = 0;
    for (int k = 0; k < size; k++) {
      if ((best & 1 << k) != 0) {
        first[kept] = first[k];
        second[kept] = second[k];
        weights[kept] = weights[k];
        System.arraycopy(w, 3 * k, w, 3 * kept, 3);
        kept++;
      }
    }
    size = kept;
  }

  /** The weighted mean of the corners' points in one of the two pieces. */
  void blend(double[] points, boolean ofFirst, double[] to) {
    to[0] = 0;
    to[1] = 0;
    to[2] = 0;
    for (int k = 0; k < size; k++) {
      int at = ofFirst ? first[k] : second[k];
      for (int c = 0; c < 3; c++) {
        to[c] += weights[k] * points[at + c];
      }
    }
  }

  /** Weights of the point nearest to the origin in the flat through a subset; false if outside. */
  private boolean weigh(int mask) {
    int n = 0;
    for (int k = 0; k < size; k++) {
      trial[k] = 0;
      if ((mask & 1 << k) != 0) {
        members[n++] = k;
      }
    }
    int o = members[0];
    for (int r = 1; r < n; r++) {
      double dot = 0;
      for (int c = 0; c < 3; c++) {
        d[3 * (r - 1) + c] = w[3 * members[r] + c] - w[3 * o + c];
        dot -= d[3 * (r - 1) + c] * w[3 * o + c];
      }
      right[r - 1] = dot;
    }
    if (!solve(n - 1)) {
      return false;
    }
    double rest = 1;
    for (int r = 1; r < n; r++) {
      double weight = right[r - 1];
      if (!(weight >= 0)) {
        return false;
      }
      trial[members[r]] = weight;
      rest -= weight;
    }
    trial[o] = rest;
    return rest >= 0;
  }

  /** Solves the normal equations of up to three differences by Cramer's rule, in place. */
  private boolean solve(int n) {
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        gram[3 * r + c] =
            d[3 * r] * d[3 * c] + d[3 * r + 1] * d[3 * c + 1] + d[3 * r + 2] * d[3 * c + 2];
      }
    }
    if (n == 1) {
      right[0] /= gram[0];
      return gram[0] > 0;
    }
    if (n == 2) {
      double det = gram[0] * gram[4] - gram[1] * gram[1];
      double s = (right[0] * gram[4] - right[1] * gram[1]) / det;
      right[1] = (right[1] * gram[0] - right[0] * gram[1]) / det;
      right[0] = s;
      return det > 0;
    }
    return n == 0 || solveThree();
  }

  /** With three differences the origin itself is met: D^T t = -w0, solved without squaring. */
  private boolean solveThree() {
    double det = triple(d, 0, d, 3, d, 6);
    if (det == 0) {
      return false;
    }
    int o = 3 * members[0];
    double[] minus = gram;
    minus[0] = -w[o];
    minus[1] = -w[o + 1];
    minus[2] = -w[o + 2];
    right[0] = triple(minus, 0, d, 3, d, 6) / det;
    right[1] = triple(d, 0, minus, 0, d, 6) / det;
    right[2] = triple(d, 0, d, 3, minus, 0) / det;
    return true;
  }

  private static double triple(double[] a, int i, double[] b, int j, double[] c, int k) {
    return a[i] * (b[j + 1] * c[k + 2] - b[j + 2] * c[k + 1])
        + a[i + 1] * (b[j + 2] * c[k] - b[j] * c[k + 2])
        + a[i + 2] * (b[j] * c[k + 1] - b[j + 1] * c[k]);
  }
}
