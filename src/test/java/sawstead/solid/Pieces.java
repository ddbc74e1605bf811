package sawstead.solid;

import java.util.ArrayList;
import java.util.List;

/** Convex pieces for tests, centred on the origin. */
final class Pieces {
  private Pieces() {}

  static Piece box(double x, double y, double z) {
    return Piece.prism(
        new double[] {-x / 2, -y / 2, x / 2, -y / 2, x / 2, y / 2, -x / 2, y / 2}, -z / 2, z / 2);
  }

  /** Unit cube, as in section 12 of the outside values. */
  static Piece cube() {
    return box(1, 1, 1);
  }

  /** |x| + |y| + |z| <= 1. */
  static Piece octahedron() {
    List<Plane> planes = new ArrayList<>();
    double d = 1 / Math.sqrt(3);
    for (int i = 0; i < 8; i++) {
      planes.add(new Plane((i & 1) == 0 ? d : -d, (i & 2) == 0 ? d : -d, (i & 4) == 0 ? d : -d, d));
    }
    return new Clipper().cut(box(2, 2, 2), planes);
  }

  /** Regular rod of n sides, touching its circle of radius 1 from outside, along z. */
  static Piece rod(int sides, double length) {
    double[] uv = new double[2 * sides];
    double radius = 1 / Math.cos(Math.PI / sides);
    for (int i = 0; i < sides; i++) {
      uv[2 * i] = radius * Math.cos(2 * Math.PI * (i + 0.5) / sides);
      uv[2 * i + 1] = radius * Math.sin(2 * Math.PI * (i + 0.5) / sides);
    }
    return Piece.prism(uv, -length / 2, length / 2);
  }

  /** The convex hull of a few points, by trying every plane through three of them. */
  static Piece hull(double... xyz) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < xyz.length; i += 3) {
      points.add(new Vec(xyz[i], xyz[i + 1], xyz[i + 2]));
    }
    List<Plane> planes = new ArrayList<>();
    for (Vec a : points) {
      for (Vec b : points) {
        for (Vec c : points) {
          Vec n = b.minus(a).cross(c.minus(a));
          if (n.length() > 1e-9) {
            Vec u = n.unit();
            if (points.stream().allMatch(p -> p.minus(a).dot(u) <= 1e-12)) {
              planes.add(new Plane(u.x(), u.y(), u.z(), u.dot(a)));
            }
          }
        }
      }
    }
    double reach = 2 * points.stream().mapToDouble(Vec::length).max().orElseThrow();
    return new Clipper().cut(box(2 * reach, 2 * reach, 2 * reach), planes);
  }

  static Piece turned(Piece piece, Axis axis, double degrees) {
    return piece.placed(Placement.identity().turned(axis, degrees));
  }

  static Piece moved(Piece piece, double x, double y, double z) {
    return piece.placed(Placement.at(new Vec(x, y, z)));
  }

  /** Volume that two pieces share. */
  static double shared(Piece a, Piece b) {
    double[] sums = new double[4];
    new Clipper().addShared(a, b, sums);
    return sums[0];
  }
}
