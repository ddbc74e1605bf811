package sawstead.layout;

/** Which saw makes a cut. */
public enum Tool {
  /** The seller's, where the sheet is bought. */
  SELLER,
  /** A circular saw along a guide rail, the sheet lying flat. */
  GUIDED,
  /** The table saw, against its fence or on a sled. */
  TABLE;

  /** The word used in files. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
