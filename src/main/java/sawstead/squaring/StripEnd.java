package sawstead.squaring;

/** An end of the strip that the fifth cut takes off, as it lies beside the blade. */
public enum StripEnd {
  /** The end at the fence, next to the operator. */
  NEAR,
  /** The end away from the operator. */
  FAR;

  /** +1 for the near end, -1 for the far one. */
  int sign() {
    return this == NEAR ? 1 : -1;
  }
}
