package sawstead.solid;

/**
 * Rigid motion from a local frame (a panel's u, v, w) to the station's frame. {@code apply(p) =
 * origin + p.x u + p.y v + p.z w}.
 *
 * <p>Invariants: u, v, w have length 1 and are square to each other to 1e-9, and w = u x v. Sines
 * and cosines of multiples of 90 degrees are exact, so a chain of right angles stays exact.
 *
 * @param u image of the local x direction, unit
 * @param v image of the local y direction, unit
 * @param w image of the local z direction, unit
 * @param origin image of the local origin, mm
 */
public record Placement(Vec u, Vec v, Vec w, Vec origin) {
  private static final double SQUARE_TOLERANCE = 1e-9;
  private static final Placement IDENTITY =
      new Placement(Axis.X.unit(), Axis.Y.unit(), Axis.Z.unit(), Vec.ZERO);

  /** Refuses directions that are not of length one, square to each other and right-handed. */
  public Placement {
    double worst =
        Math.max(
            Math.max(Math.abs(u.dot(v)), Math.max(Math.abs(u.dot(w)), Math.abs(v.dot(w)))),
            Math.max(
                Math.abs(u.dot(u) - 1), Math.max(Math.abs(v.dot(v) - 1), Math.abs(w.dot(w) - 1))));
    if (!(worst <= SQUARE_TOLERANCE) || u.cross(v).dot(w) < 0) {
      throw new SolidException(
          "a placement needs three square unit directions by the right hand, found u = "
              + u
              + ", v = "
              + v
              + ", w = "
              + w);
    }
  }

  /** Leaves everything where it is. */
  public static Placement identity() {
    return IDENTITY;
  }

  /**
   * Moves only: local axes stay parallel to the station's, the local origin comes to {@code at}.
   */
  public static Placement at(Vec at) {
    return IDENTITY.moved(at);
  }

  /**
   * From the station directions of local u and v; w = u x v.
   *
   * @param origin where the local origin comes to, mm
   * @param uDirection unit direction of u
   * @param vDirection unit direction of v, square to u to 1e-9
   */
  public static Placement of(Vec origin, Vec uDirection, Vec vDirection) {
    return new Placement(uDirection, vDirection, uDirection.cross(vDirection), origin);
  }

  /** After this, turned by the right hand about a station axis through the station's origin. */
  public Placement turned(Axis axis, double degrees) {
    return turned(Vec.ZERO, axis.unit(), degrees);
  }

  /**
   * After this, turned by the right hand about any station line.
   *
   * @param at a point of the line, mm
   * @param direction direction of the line, any length but zero
   * @param degrees angle
   */
  public Placement turned(Vec at, Vec direction, double degrees) {
    return rotation(direction, degrees).about(at).after(this);
  }

  /** After this, moved by {@code by} mm. */
  public Placement moved(Vec by) {
    return new Placement(u, v, w, origin.plus(by));
  }

  /** After this, moved by x, y, z mm. */
  public Placement moved(double x, double y, double z) {
    return moved(new Vec(x, y, z));
  }

  /** The motion that does {@code first} and then this. */
  public Placement after(Placement first) {
    return new Placement(turn(first.u), turn(first.v), turn(first.w), apply(first.origin));
  }

  /** The motion back. */
  public Placement inverse() {
    Vec back = new Vec(-u.dot(origin), -v.dot(origin), -w.dot(origin));
    return new Placement(
        new Vec(u.x(), v.x(), w.x()),
        new Vec(u.y(), v.y(), w.y()),
        new Vec(u.z(), v.z(), w.z()),
        back);
  }

  /** Station point of a local point, mm. */
  public Vec apply(Vec point) {
    return turn(point).plus(origin);
  }

  /** Station direction of a local direction. */
  public Vec turn(Vec direction) {
    double x = direction.x();
    double y = direction.y();
    double z = direction.z();
    return new Vec(
        u.x() * x + v.x() * y + w.x() * z,
        u.y() * x + v.y() * y + w.y() * z,
        u.z() * x + v.z() * y + w.z() * z);
  }

  /** Sixteen numbers of the 4 x 4 matrix, column by column, as neutral scene formats have it. */
  public double[] columnMajor() {
    return new double[] {
      u.x(),
      u.y(),
      u.z(),
      0,
      v.x(),
      v.y(),
      v.z(),
      0,
      w.x(),
      w.y(),
      w.z(),
      0,
      origin.x(),
      origin.y(),
      origin.z(),
      1
    };
  }

  private Placement about(Vec at) {
    return new Placement(u, v, w, at.minus(turn(at)));
  }

  private static Placement rotation(Vec direction, double degrees) {
    Vec k = direction.unit();
    double cos = Angles.cos(degrees);
    double sin = Angles.sin(degrees);
    return new Placement(
        rotated(Axis.X.unit(), k, cos, sin),
        rotated(Axis.Y.unit(), k, cos, sin),
        rotated(Axis.Z.unit(), k, cos, sin),
        Vec.ZERO);
  }

  /** Rodrigues' rotation formula. */
  private static Vec rotated(Vec p, Vec k, double cos, double sin) {
    return p.scale(cos).plus(k.cross(p).scale(sin)).plus(k.scale(k.dot(p) * (1 - cos)));
  }
}
