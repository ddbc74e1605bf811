package sawstead.squaring;

/** Left or right, as the operator stands. */
public enum Hand {
  LEFT,
  RIGHT;

  /** +1 on the left, -1 on the right: the sign that a mirror image turns over. */
  int sign() {
    return this == LEFT ? 1 : -1;
  }
}
