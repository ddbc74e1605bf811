package sawstead.brief;

/** Sides of the saw or the station, as the operator names them. */
public enum Side {
  /** Where the operator stands (infeed). */
  FRONT,
  /** Outfeed. */
  REAR,
  /** Left of the operator. */
  LEFT,
  /** Right of the operator. */
  RIGHT,
  /** Underneath. */
  BELOW;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
