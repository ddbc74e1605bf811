package sawstead.layout;

/** How a part's length must lie to the face grain, which runs along the length of every sheet. */
public enum Grain {
  /** The part's length runs with the grain. */
  ALONG,
  /** The part's length runs across the grain. */
  ACROSS,
  /** The part may lie either way. */
  FREE;

  /** The word used in lists and files. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
