package sawstead.layout.packing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Makes a finished packing easier to cut: changes it a little again and again and keeps a change
 * that needs fewer different widths of cut, or equally many and fewer cuts, and is as good in all
 * that matters more. Heuristic; never worse than before.
 */
final class SettingSearch {
  private static final int MOST_TAKEN = 6;
  private static final int TURN_WORK = 400;

  private final Load next;
  private final SplittableRandom random;
  private final boolean[] touched;
  private final Refill refill;
  private final Ruin ruin;
  private int[] extents = new int[64];
  private int n;
  private int cuts;
  private long own;

  SettingSearch(PackingProblem problem, long seed) {
    next = Load.empty(problem);
    random = new SplittableRandom(seed);
    touched = new boolean[problem.pieces().stream().mapToInt(PieceKind::demand).sum() + 1];
    refill = new Refill(problem, random, touched);
    ruin = new Ruin(random, touched);
  }

  /** Asked now and then. */
  interface Patience {
    boolean goOn();
  }

  /** Works for the given amount; returns a load as good in all else. */
  Load tidy(Load from, long amount, Patience patience) {
    Load best = from;
    Goal goal = new Goal(from.counted, from.price);
    long leftover = leftover(from);
    long score = score(from);
    for (int turn = 0; work() < amount; turn++) {
      if (turn % 1000 == 0 && !patience.goOn()) {
        break;
      }
      own += TURN_WORK;
      next.copyFrom(best);
      Arrays.fill(touched, 0, Math.min(touched.length, next.count + 1), false);
      ruin.ruin(next, MOST_TAKEN);
      refill.refill(next, goal);
      if (next.complete() && leftover(next) >= leftover) {
        long other = score(next);
        if (other <= score) {
          score = other;
          leftover = leftover(next);
          best = next.copy();
        }
      }
    }
    return best;
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

  /** Different widths first, then cuts. */
  private long score(Load load) {
    n = 0;
    cuts = 0;
    for (int i = 0; i < load.count; i++) {
      gather(load.sheets[i].root);
    }
    own += 4L * n;
    Arrays.sort(extents, 0, n);
    int different = 0;
    for (int i = 0; i < n; i++) {
      different += i == 0 || extents[i] != extents[i - 1] ? 1 : 0;
    }
    return ((long) different << 32) + cuts;
  }

  private void gather(Block group) {
    cuts += group.slack > 0 ? group.count : group.count - 1;
    for (int i = 0; i < group.count; i++) {
      Block part = group.parts[i];
      if (n == extents.length) {
        extents = Arrays.copyOf(extents, 2 * n);
      }
      extents[n++] = part.extent(group.alongLength);
      if (part.isGroup()) {
        gather(part);
      }
    }
  }
}
