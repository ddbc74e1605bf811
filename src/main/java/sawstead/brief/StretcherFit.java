package sawstead.brief;

/** Where stretchers run. */
public enum StretcherFit {
  /** Flat against the inside of the legs. */
  LAPPED,
  /** Between the legs, flush outside. */
  BETWEEN;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
