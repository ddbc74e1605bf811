package sawstead.layout;

/**
 * How much the planner tries.
 *
 * @param seconds nominal seconds of search; counted in work, see {@link
 *     sawstead.layout.packing.Budget}
 * @param seed start of all drawing: the same seed gives the same plan
 * @param workers searches side by side; a part of what decides the plan
 * @param favour what comes first when waste can be traded for labour
 */
public record Effort(double seconds, long seed, int workers, Favour favour) {
  /** One second, seed 1, two workers. */
  public static final Effort USUAL = new Effort(1, 1, 2);

  /** Puts a large leftover first. */
  public Effort(double seconds, long seed, int workers) {
    this(seconds, seed, workers, Favour.LEFTOVER);
  }

  /** The same with another favour. */
  public Effort favouring(Favour other) {
    return new Effort(seconds, seed, workers, other);
  }
}
