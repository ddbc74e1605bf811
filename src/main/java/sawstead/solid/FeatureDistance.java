package sawstead.solid;

/**
 * Distance of two convex pieces by comparing every edge with every edge and every corner with every
 * face: slow, and free of iteration. The last rung of {@link Gjk}.
 */
final class FeatureDistance {
  private final double[] onA;
  private final double[] onB;
  private double least = Double.POSITIVE_INFINITY;

  private FeatureDistance(double[] onA, double[] onB) {
    this.onA = onA;
    this.onB = onB;
  }

  /**
   * Distance, mm; 0 when the pieces touch or overlap.
   *
   * @param onA set to the nearest point of a
   * @param onB set to the nearest point of b
   */
  static double between(Piece a, Piece b, double[] onA, double[] onB) {
    FeatureDistance search = new FeatureDistance(onA, onB);
    search.edges(a, b);
    search.corners(a, b, onA, onB);
    search.corners(b, a, onB, onA);
    return Penetration.depth(a, b, 0) > 0 ? 0 : search.least;
  }

  private void edges(Piece a, Piece b) {
    for (int f = 0; f < a.faceCount(); f++) {
      for (int k = a.starts[f]; k < a.starts[f + 1]; k++) {
        int p = 3 * a.loops[k];
        int q = 3 * a.loops[k + 1 < a.starts[f + 1] ? k + 1 : a.starts[f]];
        if (p < q) {
          edges(a.points, p, q, b);
        }
      }
    }
  }

  private void edges(double[] pa, int p, int q, Piece b) {
    for (int f = 0; f < b.faceCount(); f++) {
      for (int k = b.starts[f]; k < b.starts[f + 1]; k++) {
        int r = 3 * b.loops[k];
        int s = 3 * b.loops[k + 1 < b.starts[f + 1] ? k + 1 : b.starts[f]];
        if (r < s) {
          segments(pa, p, q, b.points, r, s);
        }
      }
    }
  }

  private void segments(double[] pa, int p, int q, double[] pb, int r, int s) {
    double dd = 0;
    double ee = 0;
    double de = 0;
    double dw = 0;
    double ew = 0;
    for (int c = 0; c < 3; c++) {
      double d = pa[q + c] - pa[p + c];
      double e = pb[s + c] - pb[r + c];
      double w = pa[p + c] - pb[r + c];
      dd += d * d;
      ee += e * e;
      de += d * e;
      dw += d * w;
      ew += e * w;
    }
    double det = dd * ee - de * de;
    if (det > 0) {
      double t = (de * ew - ee * dw) / det;
      if (t > 0 && t < 1) {
        tryPoints(pa, p, q, t, pb, r, s, clamp((ew + t * de) / ee));
      }
    }
    // With one end of either segment fixed, the nearest point of the other is a plain projection.
    tryPoints(pa, p, q, 0, pb, r, s, clamp(ew / ee));
    tryPoints(pa, p, q, 1, pb, r, s, clamp((ew + de) / ee));
    tryPoints(pa, p, q, clamp(-dw / dd), pb, r, s, 0);
    tryPoints(pa, p, q, clamp((de - dw) / dd), pb, r, s, 1);
  }

  private static double clamp(double t) {
    return t > 0 ? Math.min(t, 1) : 0;
  }

  private void tryPoints(double[] pa, int p, int q, double t, double[] pb, int r, int s, double u) {
    double square = 0;
    for (int c = 0; c < 3; c++) {
      double off =
          pa[p + c] + t * (pa[q + c] - pa[p + c]) - pb[r + c] - u * (pb[s + c] - pb[r + c]);
      square += off * off;
    }
    double distance = Math.sqrt(square);
    if (distance < least) {
      least = distance;
      for (int c = 0; c < 3; c++) {
        onA[c] = pa[p + c] + t * (pa[q + c] - pa[p + c]);
        onB[c] = pb[r + c] + u * (pb[s + c] - pb[r + c]);
      }
    }
  }

  /** Corners of one piece above faces of the other. */
  private void corners(Piece of, Piece on, double[] ofPoint, double[] onPoint) {
    double[] n = on.planes;
    for (int i = 0; i < of.points.length; i += 3) {
      double x = of.points[i];
      double y = of.points[i + 1];
      double z = of.points[i + 2];
      for (int f = 0; f < on.faceCount(); f++) {
        double up = n[4 * f] * x + n[4 * f + 1] * y + n[4 * f + 2] * z - n[4 * f + 3];
        if (up >= 0 && up < least) {
          double px = x - up * n[4 * f];
          double py = y - up * n[4 * f + 1];
          double pz = z - up * n[4 * f + 2];
          if (on.holds(px, py, pz, Gjk.TOUCHING)) {
            least = up;
            ofPoint[0] = x;
            ofPoint[1] = y;
            ofPoint[2] = z;
            onPoint[0] = px;
            onPoint[1] = py;
            onPoint[2] = pz;
          }
        }
      }
    }
  }
}
