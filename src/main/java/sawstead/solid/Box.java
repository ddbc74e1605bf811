package sawstead.solid;

/**
 * Axis-parallel box, closed on all sides.
 *
 * @param low corner with the least coordinates, mm
 * @param high corner with the greatest coordinates, mm; none less than in {@code low}
 */
public record Box(Vec low, Vec high) {
  /** Refuses a box turned inside out. */
  public Box {
    if (low.x() > high.x() || low.y() > high.y() || low.z() > high.z()) {
      throw new SolidException("a box needs low <= high, found " + low + " and " + high);
    }
  }

  /** The least box around both. */
  public Box union(Box other) {
    return new Box(
        new Vec(
            Math.min(low.x(), other.low.x()),
            Math.min(low.y(), other.low.y()),
            Math.min(low.z(), other.low.z())),
        new Vec(
            Math.max(high.x(), other.high.x()),
            Math.max(high.y(), other.high.y()),
            Math.max(high.z(), other.high.z())));
  }

  /** This box with every face moved outward by {@code margin} mm. */
  public Box grown(double margin) {
    Vec by = new Vec(margin, margin, margin);
    return new Box(low.minus(by), high.plus(by));
  }

  /** True if the boxes are nearer than {@code gap} mm in each direction, touching included. */
  public boolean overlaps(Box other, double gap) {
    return low.x() - gap <= other.high.x()
        && other.low.x() - gap <= high.x()
        && low.y() - gap <= other.high.y()
        && other.low.y() - gap <= high.y()
        && low.z() - gap <= other.high.z()
        && other.low.z() - gap <= high.z();
  }

  /** True if the point is inside or on the box. */
  public boolean contains(Vec point) {
    return low.x() <= point.x()
        && point.x() <= high.x()
        && low.y() <= point.y()
        && point.y() <= high.y()
        && low.z() <= point.z()
        && point.z() <= high.z();
  }

  /** True if the endless line through a point along a direction meets the box. */
  public boolean isMetBy(Vec at, Vec direction) {
    double from = Double.NEGATIVE_INFINITY;
    double to = Double.POSITIVE_INFINITY;
    for (Axis axis : Axis.values()) {
      double d = direction.dot(axis.unit());
      double p = at.dot(axis.unit());
      double nearer = low.dot(axis.unit()) - p;
      double farther = high.dot(axis.unit()) - p;
      if (d == 0) {
        if (nearer > 0 || farther < 0) {
          return false;
        }
      } else {
        from = Math.max(from, Math.min(nearer / d, farther / d));
        to = Math.min(to, Math.max(nearer / d, farther / d));
      }
    }
    return from <= to;
  }

  /** Distance between the boxes, mm; 0 when they touch or overlap. */
  public double distance(Box other) {
    double dx = Math.max(0, Math.max(low.x() - other.high.x(), other.low.x() - high.x()));
    double dy = Math.max(0, Math.max(low.y() - other.high.y(), other.low.y() - high.y()));
    double dz = Math.max(0, Math.max(low.z() - other.high.z(), other.low.z() - high.z()));
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  /** Edge lengths along x, y and z, mm. */
  public Vec size() {
    return high.minus(low);
  }

  /** Centre, mm. */
  public Vec centre() {
    return low.plus(high).scale(0.5);
  }
}
