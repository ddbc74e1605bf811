package sawstead.brief;

/** How a fence is carried. */
public enum FenceKind {
  /** Fixed rails, both ends held. */
  SLIDING,
  /** The rails travel with the fence. */
  EXTENDING,
  /** Held at the front only. */
  ONE_END;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
