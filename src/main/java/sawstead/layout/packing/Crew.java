package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Workers that search for the same goal side by side in rounds of equal work. They meet only
 * between rounds, and the lowest-numbered worker that has an answer is heard, so that the outcome
 * does not depend on which thread was quicker.
 */
final class Crew implements AutoCloseable {
  /** Work per round and worker: some 20 ms. */
  private static final long ROUND = 5_000_000;

  /**
   * How much worse than before, in mean pieces left out, a change may be and still be kept; workers
   * take these in turn. Chosen by trial on the published sets.
   */
  private static final double[] HEAT = {0.02, 0.05};

  private final ExecutorService threads;
  private final Budget budget;
  private long used;

  Crew(Budget budget) {
    this.budget = budget;
    this.threads =
        Executors.newFixedThreadPool(
            budget.workers(),
            task -> {
              Thread thread = new Thread(task, "cut-plan");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Work done by each worker so far. */
  long used() {
    return used;
  }

  double share() {
    return Math.min(1, (double) used / budget.work());
  }

  /** Asked between rounds. */
  interface Patience {
    boolean goOn();
  }

  /**
   * Searches from a complete load for one that keeps within the goal.
   *
   * @param until stop when this much work has been used in all
   * @return the load, or null when none was found
   */
  Load reach(PackingProblem problem, Load from, Goal goal, long until, Patience patience) {
    List<Worker> workers = new ArrayList<>();
    for (int i = 0; i < budget.workers(); i++) {
      long seed = budget.seed() * 1_000_003 + used + i * 7919L;
      Worker worker = new Worker(problem, seed, HEAT[i % HEAT.length]);
      worker.aim(from, goal);
      workers.add(worker);
    }
    while (used < until && patience.goOn()) {
      long round = Math.min(ROUND, until - used);
      used += round;
      Load found = round(workers, round);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  private Load round(List<Worker> workers, long amount) {
    List<Future<Boolean>> rounds = new ArrayList<>();
    for (Worker worker : workers) {
      rounds.add(threads.submit(() -> worker.run(amount)));
    }
    Load found = null;
    for (int i = 0; i < rounds.size(); i++) {
      if (got(rounds.get(i)) && found == null) {
        found = workers.get(i).load().deepCopy();
      }
    }
    return found;
  }

  /**
   * Searches for less labour, each worker for itself; the best is heard, the lowest number first.
   */
  Load ease(
      PackingProblem problem,
      Labour labour,
      Load from,
      LabourSearch.Leftover rule,
      long amount,
      int round,
      LabourSearch.Patience patience) {
    List<Future<Load>> answers = new ArrayList<>();
    for (int i = 0; i < budget.workers(); i++) {
      long seed = budget.seed() * 1_000_003 + round * 101L + i * 7919L;
      Load own = from.deepCopy();
      LabourSearch search = new LabourSearch(problem, labour, seed);
      // Only the first worker asks, so that a watch hears of nothing twice.
      LabourSearch.Patience asks = i == 0 ? patience : () -> true;
      answers.add(threads.submit(() -> search.ease(own, rule, amount, asks)));
    }
    Load best = null;
    long least = Long.MAX_VALUE;
    for (Future<Load> answer : answers) {
      Load load = got(answer);
      long other = labour.of(Packing.of(load, false).sheets());
      if (other < least) {
        least = other;
        best = load;
      }
    }
    return best;
  }

  private static <T> T got(Future<T> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the search was interrupted between rounds", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("the search failed", e.getCause());
    }
  }

  @Override
  public void close() {
    threads.shutdownNow();
  }
}
