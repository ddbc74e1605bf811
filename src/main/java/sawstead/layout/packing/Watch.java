package sawstead.layout.packing;

/** Looks on while a search runs, and may end it. Called by the searching thread between rounds. */
public interface Watch {
  /** Sees nothing and never ends the search. */
  Watch NONE = (done, counted, bound) -> true;

  /**
   * Reports where the search stands.
   *
   * @param done share of the budget that is used, 0 to 1
   * @param counted sheets of the best packing so far
   * @param bound proven lower bound on them
   * @return false to end the search with the best packing so far
   */
  boolean goOn(double done, int counted, int bound);
}
