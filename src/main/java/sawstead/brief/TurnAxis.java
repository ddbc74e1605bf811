package sawstead.brief;

/** A fixed axis of the station. */
public enum TurnAxis {
  /** to the right */
  X,
  /** away from the operator */
  Y,
  /** up */
  Z;

  /** The word as a brief writes it. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
