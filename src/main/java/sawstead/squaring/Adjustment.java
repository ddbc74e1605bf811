package sawstead.squaring;

/**
 * How to move the fence so that it becomes square: loosen the squaring screw, turn the fence about
 * its pivot, and tighten.
 *
 * @param pivot the end of the fence at which the pivot screw is
 * @param distance from the pivot to where the fence is moved and measured, mm
 * @param move how far it goes there, mm; positive away from the operator
 * @param uncertainty standard uncertainty of the move, mm
 * @param isNoise whether the error cannot be told from none: then the fence stays where it is
 */
public record Adjustment(
    Hand pivot, double distance, double move, double uncertainty, boolean isNoise) {

  /**
   * What removes an error. The fence is turned back by it; the point at the distance runs on a
   * circle, whose chord is 2 P sin(e / 2).
   *
   * @param distance from the pivot to the screw, or wherever the fence is measured, mm
   */
  public static Adjustment of(Squareness found, Hand pivot, double distance) {
    if (!(distance > 0) || Double.isInfinite(distance)) {
      throw new IllegalArgumentException("the distance from the pivot is more than 0");
    }
    double chord = 2 * distance * Math.sin(found.error() / 2);
    return new Adjustment(
        pivot, distance, -pivot.sign() * chord, distance * found.uncertainty(), found.isNoise());
  }

  /** Whether the fence goes away from the operator. */
  public boolean awayFromOperator() {
    return move > 0;
  }

  /** The move with about 95 in 100 certainty, mm either way. */
  public double band() {
    return Squareness.COVERAGE * uncertainty;
  }

  /**
   * What is still off over a board when the fence is moved by a stack of leaves instead, mm.
   *
   * @param stack thickness of the leaves, mm
   * @param board length of the cut, mm
   */
  public double leftOver(double stack, double board) {
    return board * Math.abs(Math.abs(move) - stack) / distance;
  }

  /** What may be off over a board however exactly the move is made, mm: the measurement's part. */
  public double unsureOver(double board) {
    return board * band() / distance;
  }
}
