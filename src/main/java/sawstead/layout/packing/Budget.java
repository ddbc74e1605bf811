package sawstead.layout.packing;

/**
 * How long to search, counted in work and not by the clock, so that a plan depends on the seed and
 * never on the machine.
 *
 * <p>One second of budget stands for {@link #WORK_PER_SECOND} units of work on each worker, which
 * took between half a second and a second on the two-core machine this was measured on. A slower
 * machine takes longer and finds the same plan.
 *
 * @param seconds nominal seconds, positive
 * @param seed start of all drawing
 * @param workers independent searches side by side, at least 1; part of what decides the plan
 */
public record Budget(double seconds, long seed, int workers) {
  /** Units of work (free rectangles looked at, blocks copied) that stand for one second. */
  public static final long WORK_PER_SECOND = 250_000_000;

  public Budget {
    if (!(seconds > 0) || seconds > 86_400 || workers < 1 || workers > 64) {
      throw new IllegalArgumentException(
          "a budget of " + seconds + " s on " + workers + " workers is not possible");
    }
  }

  /** Work that each worker may do. */
  long work() {
    return (long) (seconds * WORK_PER_SECOND);
  }
}
