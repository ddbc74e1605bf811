package sawstead.layout.packing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Makes a finished packing easier to cut: changes it a little again and again and keeps a change
 * that takes no more labour and is as good in all that matters more. Heuristic; never worse than
 * before.
 */
final class LabourSearch {
  private static final int MOST_TAKEN = 6;
  private static final int TURN_WORK = 400;

  /** Work of judging one piece, in the units of {@link Budget}. */
  private static final int JUDGING_WORK = 1200;

  /** Whether large leftovers must stay as large as they were. */
  enum Leftover {
    KEPT,
    FREE
  }

  private final Load next;
  private final Labour labour;
  private final SplittableRandom random;
  private final boolean[] touched;
  private final Refill refill;
  private final Ruin ruin;
  private final int pieces;
  private long own;

  LabourSearch(PackingProblem problem, Labour labour, long seed) {
    this.labour = labour;
    next = Load.empty(problem);
    random = new SplittableRandom(seed);
    pieces = problem.pieces().stream().mapToInt(PieceKind::demand).sum();
    touched = new boolean[pieces + 1];
    refill = new Refill(problem, random, touched);
    ruin = new Ruin(random, touched);
  }

  /** Asked now and then. */
  interface Patience {
    boolean goOn();
  }

  /** Works for the given amount; returns a load as good in all else. */
  Load ease(Load from, Leftover rule, long amount, Patience patience) {
    Load best = from;
    Goal goal = new Goal(from.counted, from.price);
    long leftover = rule == Leftover.KEPT ? leftover(from) : 0;
    long least = labour(from);
    long until = work() + amount;
    for (int turn = 0; work() < until; turn++) {
      if (turn % 500 == 0 && !patience.goOn()) {
        break;
      }
      own += TURN_WORK;
      next.copyFrom(best);
      Arrays.fill(touched, 0, Math.min(touched.length, next.count + 1), false);
      ruin.ruin(next, MOST_TAKEN);
      refill.refill(next, goal);
      if (next.complete() && (leftover == 0 || leftover(next) >= leftover)) {
        long other = labour(next);
        if (other <= least) {
          least = other;
          leftover = rule == Leftover.KEPT ? leftover(next) : 0;
          best = next.copy();
        }
      }
    }
    return best;
  }

  private long labour(Load load) {
    own += (long) JUDGING_WORK * pieces;
    return labour.of(Packing.of(load, false).sheets());
  }

  private long work() {
    return own + ruin.work() + refill.work();
  }

  private static long leftover(Load load) {
    long largest = 0;
    for (int i = 0; i < load.count; i++) {
      largest = Math.max(largest, load.sheets[i].largestLeftover());
    }
    return largest;
  }
}
