package sawstead.brief;

/** Which face of a board its pockets are in. */
public enum PocketSide {
  /** Inside, and outside only where no drill has room inside. */
  AUTO,
  /** The face that looks inward. */
  INSIDE,
  /** The face that looks outward. */
  OUTSIDE
}
