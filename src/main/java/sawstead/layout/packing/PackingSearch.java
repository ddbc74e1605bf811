package sawstead.layout.packing;

import java.util.Optional;

/**
 * Looks for a packing with the fewest counted sheets, then the lowest price, then the largest
 * single piece left over, then the fewest different widths of cut.
 *
 * <p>Anytime: a complete packing exists after the first moments and only gets better. The first
 * goal ends early when it meets the proven lower bound.
 */
public final class PackingSearch {
  /** Shares of the budget after which the next goal is taken up. */
  private static final double SHEETS_UNTIL = 0.8;

  private static final double PRICE_UNTIL = 0.86;

  /** Most of the budget that the searches for a large leftover and for few settings may take. */
  private static final double LEFTOVER_SHARE = 0.3;

  private static final double SETTING_SHARE = 0.15;

  private final PackingProblem problem;
  private final Budget budget;
  private final Watch watch;
  private final int bound;
  private boolean stopped;

  private PackingSearch(PackingProblem problem, Budget budget, int bound, Watch watch) {
    this.problem = problem;
    this.budget = budget;
    this.watch = watch;
    this.bound = bound;
  }

  /**
   * Searches within the budget.
   *
   * @param bound a proven lower bound on counted sheets, see {@link LowerBound}
   * @return the best packing found; empty when the limited supply of sheets sufficed for none that
   *     was tried
   */
  public static Optional<Packing> search(
      PackingProblem problem, Budget budget, int bound, Watch watch) {
    PackingSearch search = new PackingSearch(problem, budget, bound, watch);
    try (Crew crew = new Crew(budget)) {
      return Optional.ofNullable(search.run(crew));
    }
  }

  private Packing run(Crew crew) {
    Load best = new Worker(problem, budget.seed(), 0).begin();
    if (!best.complete()) {
      best = reach(crew, best, Goal.NONE, SHEETS_UNTIL);
      if (best == null) {
        return null;
      }
    }
    Load fewer = best;
    while (fewer != null && !stopped) {
      best = fewer;
      fewer =
          best.counted <= bound
              ? null
              : reach(crew, best, new Goal(best.counted - 1, Long.MAX_VALUE), SHEETS_UNTIL);
    }
    Load cheaper = priced() ? best : null;
    while (cheaper != null && !stopped) {
      best = cheaper;
      cheaper =
          best.price == 0
              ? null
              : reach(crew, best, new Goal(best.counted, best.price - 1), PRICE_UNTIL);
    }
    long left = budget.work() - crew.used();
    long share = (long) Math.min(0.6 * left, LEFTOVER_SHARE * budget.work());
    best = new LeftoverSearch(problem, crew, this::goOn, best).widen(crew.used() + share);
    share = (long) Math.min(budget.work() - crew.used(), SETTING_SHARE * budget.work());
    Load found = best;
    best = new SettingSearch(problem, budget.seed()).tidy(best, share, () -> goOn(crew, found));
    return Packing.of(best, stopped);
  }

  private Load reach(Crew crew, Load from, Goal goal, double share) {
    long until = (long) (budget.work() * share);
    return crew.reach(problem, from, goal, until, () -> goOn(crew, from));
  }

  private boolean goOn(Crew crew, Load best) {
    stopped = stopped || !watch.goOn(crew.share(), best.counted, bound);
    return !stopped;
  }

  /** Whether packings with equally many sheets can differ in price. */
  private boolean priced() {
    return problem.sheets().size() > 1 && problem.sheets().stream().anyMatch(s -> s.price() > 0);
  }
}
