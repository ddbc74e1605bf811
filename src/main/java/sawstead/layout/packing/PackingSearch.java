package sawstead.layout.packing;

import java.util.Optional;
import sawstead.layout.packing.LabourSearch.Leftover;

/**
 * Looks for a packing with the fewest counted sheets, then the lowest price, then the largest
 * single piece left over, then the least labour; and for the packings that trade these.
 *
 * <p>Anytime: a complete packing exists after the first moments and only gets better. The first
 * goal ends early when it meets the proven lower bound.
 */
public final class PackingSearch {
  /** Shares of the budget after which the next goal is taken up. */
  private static final double SHEETS_UNTIL = 0.8;

  private static final double PRICE_UNTIL = 0.86;

  /**
   * Most of the budget that the searches for a large leftover and for little labour may take, the
   * latter three times.
   */
  private static final double LEFTOVER_SHARE = 0.3;

  private static final double LABOUR_SHARE = 0.12;

  /** Rounds after which the searches for little labour go on from the best of them. */
  private static final int LABOUR_ROUNDS = 3;

  private final PackingProblem problem;
  private final Labour labour;
  private final Budget budget;
  private final Watch watch;
  private final int bound;
  private boolean stopped;

  private PackingSearch(
      PackingProblem problem, Labour labour, Budget budget, int bound, Watch watch) {
    this.problem = problem;
    this.labour = labour;
    this.budget = budget;
    this.watch = watch;
    this.bound = bound;
  }

  /**
   * Searches within the budget.
   *
   * @param labour what is to be little when all else is equal
   * @param bound a proven lower bound on counted sheets, see {@link LowerBound}
   * @return the best packings found; empty when the limited supply of sheets sufficed for none that
   *     was tried
   */
  public static Optional<Choices> search(
      PackingProblem problem, Labour labour, Budget budget, int bound, Watch watch) {
    PackingSearch search = new PackingSearch(problem, labour, budget, bound, watch);
    try (Crew crew = new Crew(budget)) {
      return Optional.ofNullable(search.run(crew));
    }
  }

  private Choices run(Crew crew) {
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
    Load kept = ease(crew, best, Leftover.KEPT);
    Load eased = ease(crew, kept, Leftover.FREE);
    Packing least = Packing.of(eased, stopped);
    return new Choices(Packing.of(kept, stopped), least, oneMore(crew, eased, least));
  }

  private Load ease(Crew crew, Load from, Leftover rule) {
    long share = (long) (LABOUR_SHARE * budget.work() / LABOUR_ROUNDS);
    Load best = from;
    for (int round = 0; round < LABOUR_ROUNDS && !stopped; round++) {
      Load shown = best;
      best = crew.ease(problem, labour, best, rule, share, round, () -> goOn(crew, shown));
    }
    return best;
  }

  /** The same with one sheet more to spread out on. */
  private Optional<Packing> oneMore(Crew crew, Load from, Packing least) {
    Goal wider = new Goal(from.counted + 1, Long.MAX_VALUE);
    for (int kind = 0; kind < problem.sheets().size(); kind++) {
      if (problem.sheets().get(kind).counted() && wider.admits(from, kind)) {
        Load spread = from.deepCopy();
        spread.open(OpenSheet.empty(kind, problem.sheets().get(kind)));
        Packing packing = Packing.of(ease(crew, spread, Leftover.FREE), stopped);
        boolean less = labour.of(packing.sheets()) < labour.of(least.sheets());
        return less ? Optional.of(packing) : Optional.empty();
      }
    }
    return Optional.empty();
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
