package sawstead.brief;

/** Section of a miter slot. */
public enum SlotKind {
  /** Straight walls. */
  PLAIN,
  /** Wider at the floor, for a washer. */
  T,
  /** Straight, with tabs that hold the bar down. */
  TABBED;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
