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

  /** Most pieces or rows that one ruin sets out to take. */
  private static final int MOST_TAKEN = 12;

  /** One ruin in this many empties a whole sheet first. */
  private static final int WHOLE_SHEET = 32;

  private static final int COPY_WORK = 16;
  private static final int TURN_WORK = 400;

  private final PackingProblem problem;
  private final SplittableRandom random;
  private final boolean[] touched;
  private final Refill refill;
  private final double heat;

  private Load now;
  private final Load next;
  private Goal goal;
  private long ruinWork;

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
    return ruinWork + refill.work();
  }

  Load load() {
    return now;
  }

  /** Works until nothing is left out or the given amount of work is done; true when complete. */
  boolean run(long amount) {
    long until = work() + amount;
    while (now.outArea > 0 && work() < until) {
      ruinWork += TURN_WORK + 4L * now.count + 2L * now.out.length;
      next.copyFrom(now);
      Arrays.fill(touched, 0, Math.min(touched.length, next.count + 1), false);
      ruin(next);
      refill.refill(next, goal);
      double limit = now.outArea - heat * Math.log(1 - random.nextDouble());
      if (next.outArea <= limit) {
        now.copyFrom(next);
      }
    }
    return now.outArea == 0;
  }

  private void ruin(Load load) {
    int wanted = 1 + random.nextInt(MOST_TAKEN);
    if (load.count > 0 && random.nextInt(WHOLE_SHEET) == 0) {
      int at = random.nextInt(load.count);
      load.close(at);
      touched[at] = touched[load.count];
    }
    int taken = 0;
    for (int attempt = 0; attempt < 20 && taken < wanted && load.count > 0; attempt++) {
      taken += take(load, random.nextInt(load.count));
    }
  }

  /** Takes one piece, or one group with all in it, from a sheet. */
  private int take(Load load, int at) {
    OpenSheet sheet = load.sheets[at];
    int pieces = sheet.pieces.size();
    if (pieces == 0) {
      return 0;
    }
    if (!touched[at]) {
      sheet = sheet.copy();
      load.sheets[at] = sheet;
      touched[at] = true;
      ruinWork += COPY_WORK * (long) (sheet.groups.size() + pieces);
    }
    int pick = random.nextInt(pieces + sheet.groups.size());
    Block block = pick < pieces ? sheet.pieces.get(pick) : sheet.groups.get(pick - pieces);
    long free = sheet.free;
    sheet.remove(block, load.out);
    load.outArea += sheet.free - free;
    return pieces - sheet.pieces.size();
  }
}
