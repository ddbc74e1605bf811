package sawstead.layout;

/** A direction on a sheet; the grain runs along the length. */
public enum Direction {
  LENGTH,
  WIDTH;

  /** The other direction. */
  public Direction across() {
    return this == LENGTH ? WIDTH : LENGTH;
  }

  /** The word used in files. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
