package sawstead.brief;

/** A face of a panel. */
public enum CutFace {
  /** w = thickness */
  FRONT,
  /** w = 0 */
  BACK;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
