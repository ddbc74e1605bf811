package sawstead.brief;

/** How the outfeed is carried. */
public enum Mount {
  /** Stands on the stand's own top. */
  ON_TOP,
  /** Hangs behind the stand. */
  HUNG;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
