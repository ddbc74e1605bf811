package sawstead.brief;

/** Outline of the throat, seen from above. */
public enum ThroatShape {
  /** A rectangle, its corners rounded or not. */
  STRAIGHT,
  /** Its ends are half circles. */
  ROUND,
  /** Its corners are cut off slantwise. */
  TAPERED;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
