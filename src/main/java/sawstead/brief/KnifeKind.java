package sawstead.brief;

/** What keeps a cut open behind the blade. */
public enum KnifeKind {
  /** Rises, falls and tilts with the blade, and ends below its crown. */
  RIVING,
  /** Stands still, usually above the blade, and carries the guard. */
  SPLITTER;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
