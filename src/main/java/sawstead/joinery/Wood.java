package sawstead.joinery;

/** What a thread bites into, as far as the pilot hole cares. */
public enum Wood {
  /** Lighter than {@link #HARD_FROM}, across the face. */
  SOFT,
  /** From {@link #HARD_FROM} on, across the face. */
  HARD,
  /** Between the plies of an edge, which splits before it crushes. */
  PLY_EDGE;

  /** Density from which wood counts as hard, kg/m3: the G = 0.6 of REF-FAS-14. */
  public static final double HARD_FROM = 600;

  /** What a thread meets that goes into a face or an edge of a board. */
  static Wood of(Board board, boolean edge) {
    return edge ? PLY_EDGE : board.density() >= HARD_FROM ? HARD : SOFT;
  }
}
