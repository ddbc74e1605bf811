package sawstead.brief;

/** On which half of a switch's plate its stop lies; its start lies on the other. */
public enum StopPlace {
  /** The lower half. */
  BELOW,
  /** The upper half. */
  ABOVE,
  /** The left half, seen by the operator. */
  LEFT,
  /** The right half. */
  RIGHT
}
