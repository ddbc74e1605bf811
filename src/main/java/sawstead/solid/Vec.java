package sawstead.solid;

/**
 * A point or a direction in three dimensions, in mm unless it is a unit direction. Negative zero is
 * stored as zero, so that {@code equals} means equal numbers.
 *
 * @param x first coordinate
 * @param y second coordinate
 * @param z third coordinate
 */
public record Vec(double x, double y, double z) {
  /** The origin. */
  public static final Vec ZERO = new Vec(0, 0, 0);

  /** Refuses what is not a finite number. */
  public Vec {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
      throw new SolidException(
          "a point needs three finite numbers, found (" + x + ", " + y + ", " + z + ")");
    }
    x += 0.0;
    y += 0.0;
    z += 0.0;
  }

  /** Coordinate along an axis. */
  public double along(Axis axis) {
    return switch (axis) {
      case X -> x;
      case Y -> y;
      case Z -> z;
    };
  }

  /** This plus the other. */
  public Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y, z + other.z);
  }

  /** This minus the other. */
  public Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y, z - other.z);
  }

  /** This, {@code factor} times as long. */
  public Vec scale(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  /** Scalar product. */
  public double dot(Vec other) {
    return x * other.x + y * other.y + z * other.z;
  }

  /** Vector product, by the right hand. */
  public Vec cross(Vec other) {
    return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  /** Euclidean length, without overflow for any finite coordinates that have one. */
  public double length() {
    double most = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
    if (most == 0 || most > 1e-100 && most < 1e100) {
      return Math.sqrt(dot(this));
    }
    return Math.hypot(x, Math.hypot(y, z));
  }

  /** Distance to another point. */
  public double distance(Vec other) {
    return minus(other).length();
  }

  /**
   * The same direction with length one.
   *
   * @throws SolidException if this has no length
   */
  public Vec unit() {
    double length = length();
    if (length == 0) {
      throw new SolidException("a direction of no length was given: (0, 0, 0)");
    }
    return new Vec(x / length, y / length, z / length);
  }
}
