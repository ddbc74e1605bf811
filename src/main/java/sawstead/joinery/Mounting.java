package sawstead.joinery;

/** Where the leaves of a continuous hinge lie. */
public enum Mounting {
  /**
   * Both leaves on faces or edges that lie in one plane, the pin in that plane over the joint line:
   * the knuckle stands out by its radius and sinks by it into a relief along both arrises.
   */
  OUTSIDE,
  /**
   * In the corner under a board that stands out from an upright one and folds down: one leaf on the
   * upright face below, the other under the board, the knuckle in the corner touching both.
   */
  UNDER_CORNER
}
