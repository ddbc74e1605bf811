package sawstead.solid;

/**
 * Heights of points that turn about an axis. With k the unit direction of the axis and r a point
 * from the axis, the height along n after a turn by t is
 *
 * <pre>(n.k)(r.k) + cos t (n.r - (n.k)(r.k)) + sin t (n.(k x r))</pre>
 *
 * a sinusoid, whose greatest value over an interval shorter than half a turn is at one of its ends,
 * or its crest where it rises at the first end and falls at the second.
 */
final class TurnHeights {
  private final double px;
  private final double py;
  private final double pz;
  private final double kx;
  private final double ky;
  private final double kz;

  TurnHeights(Vec at, Vec axis) {
    px = at.x();
    py = at.y();
    pz = at.z();
    kx = axis.x();
    ky = axis.y();
    kz = axis.z();
  }

  /**
   * Greatest height above the axis' point that any of the points has during a turn.
   *
   * @param points at no turn
   * @param n unit direction of height
   * @param sign 1 to turn the points by the right hand, -1 the other way
   * @param from first angle, radians
   * @param to last angle, radians, no less than {@code from}
   */
  double highest(double[] points, double[] n, int sign, double from, double to) {
    double nk = n[0] * kx + n[1] * ky + n[2] * kz;
    double cos0 = Math.cos(from);
    double sin0 = sign * Math.sin(from);
    double cos1 = Math.cos(to);
    double sin1 = sign * Math.sin(to);
    boolean wide = to - from >= Math.PI;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < points.length; i += 3) {
      double rx = points[i] - px;
      double ry = points[i + 1] - py;
      double rz = points[i + 2] - pz;
      double level = nk * (rx * kx + ry * ky + rz * kz);
      double c = n[0] * rx + n[1] * ry + n[2] * rz - level;
      double s =
          n[0] * (ky * rz - kz * ry) + n[1] * (kz * rx - kx * rz) + n[2] * (kx * ry - ky * rx);
      boolean rises = sign * (s * cos0 - c * sin0) > 0;
      boolean falls = sign * (s * cos1 - c * sin1) < 0;
      if (wide || rises && falls) {
        most = Math.max(most, level + Math.sqrt(c * c + s * s));
      } else {
        most = Math.max(most, level + Math.max(c * cos0 + s * sin0, c * cos1 + s * sin1));
      }
    }
    return most;
  }

  /** Height of the axis' point along n. */
  double base(double[] n) {
    return n[0] * px + n[1] * py + n[2] * pz;
  }

  /** A direction after a turn. */
  void turn(double[] n, double angle, double[] to) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double nk = (n[0] * kx + n[1] * ky + n[2] * kz) * (1 - cos);
    double x = n[0] * cos + (ky * n[2] - kz * n[1]) * sin + kx * nk;
    double y = n[1] * cos + (kz * n[0] - kx * n[2]) * sin + ky * nk;
    double z = n[2] * cos + (kx * n[1] - ky * n[0]) * sin + kz * nk;
    to[0] = x;
    to[1] = y;
    to[2] = z;
  }

  /** Greatest distance of any of the points from the axis. */
  double radius(double[] points) {
    double most = 0;
    for (int i = 0; i < points.length; i += 3) {
      double rx = points[i] - px;
      double ry = points[i + 1] - py;
      double rz = points[i + 2] - pz;
      double along = rx * kx + ry * ky + rz * kz;
      most = Math.max(most, rx * rx + ry * ry + rz * rz - along * along);
    }
    return Math.sqrt(most);
  }
}
