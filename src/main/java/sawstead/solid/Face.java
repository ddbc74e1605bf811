package sawstead.solid;

/** One of the two broad faces of a panel, from which a recess or a bore goes in. */
public enum Face {
  /** The face at w = thickness. */
  FRONT,
  /** The face at w = 0. */
  BACK
}
