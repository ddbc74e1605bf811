package sawstead.brief;

/** What closes one side of a stand. */
public enum SideWish {
  /** No lower stretcher; the upper one is screwed, never glued. */
  OPEN,
  /** An upper and a lower stretcher. */
  STRETCHERS,
  /** Stretchers and a panel against racking. */
  PANEL;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
