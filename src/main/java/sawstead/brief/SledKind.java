package sawstead.brief;

/** What a sled is for. */
public enum SledKind {
  /** Square cuts across boards. */
  CROSSCUT,
  /** Pieces too small to hold: one runner, and a clamp that holds them down. */
  SMALL_PARTS;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
