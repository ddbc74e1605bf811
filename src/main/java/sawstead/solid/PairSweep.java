package sawstead.solid;

/**
 * One kind of motion, applied to pieces of one mover against pieces of one obstacle. Progress is
 * measured from 0 at the motion's first parameter, in mm or degrees, whichever way it goes.
 */
interface PairSweep {
  /** Answer of {@link #firstContact} when nothing is met. */
  double NONE = Double.POSITIVE_INFINITY;

  /**
   * Progress at which the contact begins that leads to more than the tolerance.
   *
   * @param declared true if it begins only where it passes the tolerance
   * @return {@link #NONE} if depth stays within the tolerance
   */
  double firstContact(Piece[] movers, Piece[] obstacles, boolean declared);

  /** A progress at which the last contact found is deep, or could not be proven shallow. */
  double deepAt();

  /**
   * The least distance over the whole motion, mm.
   *
   * @param below only a distance less than this is of interest; otherwise any number no less than
   *     it may be returned
   */
  double leastDistance(Piece[] movers, Piece[] obstacles, double below);

  /** A station box that holds what is in the given one at rest, all through the motion. */
  Box passed(Box atRest);

  /** Intervals and distances looked at so far. */
  long evaluations();
}
