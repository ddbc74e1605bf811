package sawstead.solid;

/** One of the three fixed directions of a right-handed frame. */
public enum Axis {
  /** The first direction: right in the station, along the grain (u) in a panel. */
  X,
  /** The second direction: the feed direction in the station, across the grain (v) in a panel. */
  Y,
  /** The third direction: up in the station, through the thickness (w) in a panel. */
  Z;

  /** Unit direction of this axis. */
  public Vec unit() {
    return new Vec(this == X ? 1 : 0, this == Y ? 1 : 0, this == Z ? 1 : 0);
  }

  /** The axis that a direction is most along; of equals z first, then x. */
  public static Axis nearest(Vec direction) {
    double x = Math.abs(direction.x());
    double y = Math.abs(direction.y());
    double z = Math.abs(direction.z());
    return z >= x && z >= y ? Z : x >= y ? X : Y;
  }
}
