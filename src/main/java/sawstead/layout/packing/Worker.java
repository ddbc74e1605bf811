package sawstead.layout.packing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Ruin and refill toward a goal: a load that keeps within the goal but leaves pieces out is changed
 * again and again, and a change that leaves out not much more is kept, until nothing is left out.
 * The idea of a goal of one sheet less, met by repeated ruin, is that of Gardeyn and Wauters (EJOR
 * 2022); moves and measures of fit are our own.
 *
 * <p>Deterministic: the same seed, problem and amounts of work give the same loads.
 */
final class Worker {
  private static final int BEGINNINGS = 12;

  /** Most pieces that one ruin sets out to take. */
  private static final int MOST_TAKEN = 12;

  private static final int TURN_WORK = 400;

  private final PackingProblem problem;
  private final SplittableRandom random;
  private final boolean[] touched;
  private final Refill refill;
  private final Ruin ruin;
  private final double heat;

  private Load now;
  private final Load next;
  private Goal goal;
  private long turnWork;

  /**
   * Makes a worker.
   *
   * @param heat how much worse than before, in mean pieces left out, a change may typically be and
   *     still be kept
   */
  Worker(PackingProblem problem, long seed, double heat) {
    this.problem = problem;
    this.random = new SplittableRandom(seed);
    int copies = problem.pieces().stream().mapToInt(PieceKind::demand).sum();
    this.touched = new boolean[copies + 1];
    this.refill = new Refill(problem, random, touched);
    this.ruin = new Ruin(random, touched);
    this.heat = heat * problem.pieceArea() / copies;
    this.next = Load.empty(problem);
  }

  /** The best of a few refills from nothing; incomplete when the supply sufficed for none. */
  Load begin() {
    Load best = null;
    Arrays.fill(touched, true);
    for (int i = 0; i < BEGINNINGS; i++) {
      Load load = Load.empty(problem);
      refill.refill(load, Goal.NONE);
      best = best == null || better(load, best) ? load : best;
    }
    return best;
  }

  private static boolean better(Load a, Load b) {
    if (a.outArea != b.outArea) {
      return a.outArea < b.outArea;
    }
    return a.counted != b.counted ? a.counted < b.counted : a.price < b.price;
  }

  /** Starts from a load toward a goal; sheets are closed until the load keeps within it. */
  void aim(Load from, Goal aim) {
    goal = aim;
    now = from.deepCopy();
    while (!goal.admits(now)) {
      now.close(now.leastFilledThatCosts(now.counted > goal.counted()));
    }
  }

  private long work() {
    return turnWork + ruin.work() + refill.work();
  }

  Load load() {
    return now;
  }

  /** Works until nothing is left out or the given amount of work is done; true when complete. */
  boolean run(long amount) {
    long until = work() + amount;
    while (now.outArea > 0 && work() < until) {
      turnWork += TURN_WORK + 4L * now.count + 2L * now.out.length;
      next.copyFrom(now);
      Arrays.fill(touched, 0, Math.min(touched.length, next.count + 1), false);
      ruin.ruin(next, MOST_TAKEN);
      refill.refill(next, goal);
      double limit = now.outArea - heat * Math.log(1 - random.nextDouble());
      if (next.outArea <= limit) {
        now.copyFrom(next);
      }
    }
    return now.outArea == 0;
  }
}
