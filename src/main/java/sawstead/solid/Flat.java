package sawstead.solid;

/** Arithmetic on points kept as x, y, z in one array. */
final class Flat {
  private Flat() {}

  /** Six times the signed volume of the tetrahedron from point {@code o} to a triangle a, b, c. */
  static double volume6(double[] p, int o, int a, int b, int c) {
    double x0 = p[3 * o];
    double y0 = p[3 * o + 1];
    double z0 = p[3 * o + 2];
    double ax = p[3 * a] - x0;
    double ay = p[3 * a + 1] - y0;
    double az = p[3 * a + 2] - z0;
    double bx = p[3 * b] - x0;
    double by = p[3 * b + 1] - y0;
    double bz = p[3 * b + 2] - z0;
    double cx = p[3 * c] - x0;
    double cy = p[3 * c + 1] - y0;
    double cz = p[3 * c + 2] - z0;
    return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }
}
