package sawstead.solid;

import java.util.Arrays;

/**
 * A convex region of the plane as half-planes nu u + nv v <= c. Grown around a seed by cutting away
 * whatever obstacle edge still reaches into it.
 */
final class Wedge {
  /** Cosine between outward normals below which two edges face each other. */
  private static final double FACING = -0.9;

  private double[] lines = new double[48];
  private int count;

  /** Starts as a rectangle. */
  Wedge(double u0, double v0, double u1, double v1) {
    cut(-1, 0, -u0);
    cut(0, -1, -v0);
    cut(1, 0, u1);
    cut(0, 1, v1);
  }

  /** Keeps only where nu u + nv v <= c. */
  void cut(double nu, double nv, double c) {
    if (3 * count == lines.length) {
      lines = Arrays.copyOf(lines, 2 * lines.length);
    }
    lines[3 * count] = nu;
    lines[3 * count + 1] = nv;
    lines[3 * count + 2] = c;
    count++;
  }

  /**
   * True if some stretch of a border edge lies inside by more than the margin. Against a line that
   * faces the edge the margin is none: what lies between the two may be thinner than it.
   */
  boolean isEntered(double au, double av, double bu, double bv, double margin) {
    double length = Math.hypot(bu - au, bv - av);
    double outU = (bv - av) / length;
    double outV = (au - bu) / length;
    double t0 = 0;
    double t1 = 1;
    for (int i = 0; i < 3 * count; i += 3) {
      double slack = lines[i] * outU + lines[i + 1] * outV < FACING ? 0 : margin;
      double da = lines[i] * au + lines[i + 1] * av - lines[i + 2] + slack;
      double db = lines[i] * bu + lines[i + 1] * bv - lines[i + 2] + slack;
      if (da >= 0 && db >= 0) {
        return false;
      }
      if (da > 0) {
        t0 = Math.max(t0, da / (da - db));
      } else if (db > 0) {
        t1 = Math.min(t1, da / (da - db));
      }
      if (t0 >= t1) {
        return false;
      }
    }
    return true;
  }

  boolean holds(double u, double v, double margin) {
    for (int i = 0; i < 3 * count; i += 3) {
      if (lines[i] * u + lines[i + 1] * v > lines[i + 2] + margin) {
        return false;
      }
    }
    return true;
  }

  /**
   * Corners as u, v and, for the edge that leaves each, its half-plane nu, nv, c: five numbers
   * each, counter-clockwise. Edges shorter than the given length are left out.
   */
  double[] corners(double shortest) {
    double[] ring = new double[20];
    double[][] start = {
      {-lines[2], -lines[5]}, {lines[8], -lines[5]}, {lines[8], lines[11]}, {-lines[2], lines[11]}
    };
    int[] of = {1, 2, 3, 0};
    for (int i = 0; i < 4; i++) {
      set(ring, i, start[i][0], start[i][1], of[i]);
    }
    for (int k = 4; k < count && ring.length > 0; k++) {
      ring = clipped(ring, k);
    }
    return withoutShort(ring, shortest);
  }

  private double[] clipped(double[] ring, int k) {
    int n = ring.length / 5;
    double[] out = new double[10 * n];
    int m = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      double di = side(ring, i, k);
      double dj = side(ring, j, k);
      if (di <= 0) {
        System.arraycopy(ring, 5 * i, out, 5 * m++, 5);
      }
      if ((di <= 0) != (dj <= 0)) {
        double t = di / (di - dj);
        double u = ring[5 * i] + t * (ring[5 * j] - ring[5 * i]);
        double v = ring[5 * i + 1] + t * (ring[5 * j + 1] - ring[5 * i + 1]);
        if (di <= 0) {
          set(out, m++, u, v, k);
        } else {
          System.arraycopy(ring, 5 * i, out, 5 * m, 5);
          out[5 * m] = u;
          out[5 * m++ + 1] = v;
        }
      }
    }
    return Arrays.copyOf(out, 5 * m);
  }

  private double side(double[] ring, int i, int k) {
    return lines[3 * k] * ring[5 * i] + lines[3 * k + 1] * ring[5 * i + 1] - lines[3 * k + 2];
  }

  private void set(double[] ring, int i, double u, double v, int line) {
    ring[5 * i] = u;
    ring[5 * i + 1] = v;
    System.arraycopy(lines, 3 * line, ring, 5 * i + 2, 3);
  }

  private static double[] withoutShort(double[] ring, double shortest) {
    int n = ring.length / 5;
    double[] out = new double[ring.length];
    int m = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      if (Math.hypot(ring[5 * j] - ring[5 * i], ring[5 * j + 1] - ring[5 * i + 1]) > shortest) {
        System.arraycopy(ring, 5 * i, out, 5 * m++, 5);
      }
    }
    return Arrays.copyOf(out, 5 * m);
  }
}
