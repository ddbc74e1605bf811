package sawstead.squaring;

import java.util.ArrayList;
import java.util.List;

/**
 * Leaves of a set of feeler gauges.
 *
 * @param leaves thicknesses, mm, each once
 */
public record FeelerGauges(List<Double> leaves) {
  /** More leaves than this spring apart, and the stack is thicker than their sum (no source). */
  static final int MOST = 4;

  /** Nearer than this two stacks are the same, mm: the fewer leaves win. */
  private static final double SAME = 1e-9;

  /** A usual set in mm (common practice, no source). */
  public static final FeelerGauges USUAL =
      new FeelerGauges(
          List.of(
              0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50, 0.60,
              0.70, 0.80, 0.90, 1.00));

  /** Refuses leaves that are none. */
  public FeelerGauges {
    leaves = leaves.stream().distinct().sorted().toList();
    if (leaves.isEmpty() || leaves.size() > 40 || !(leaves.get(0) > 0)) {
      throw new IllegalArgumentException("a set has 1 to 40 leaves, each thicker than 0");
    }
  }

  /**
   * The leaves whose sum comes nearest to a thickness, none when no leaf is nearer than nothing; of
   * equals, the fewest. All sets of up to four are tried.
   */
  public List<Double> stack(double thickness) {
    Best best = new Best(thickness);
    best.offer(List.of(), 0);
    search(best, new ArrayList<>(), 0, 0);
    return best.leaves;
  }

  private void search(Best best, List<Double> taken, double sum, int from) {
    if (taken.size() == MOST) {
      return;
    }
    for (int i = from; i < leaves.size(); i++) {
      taken.add(leaves.get(i));
      best.offer(taken, sum + leaves.get(i));
      search(best, taken, sum + leaves.get(i), i + 1);
      taken.remove(taken.size() - 1);
    }
  }

  /** The nearest so far. */
  private static final class Best {
    private final double wanted;
    private double off = Double.POSITIVE_INFINITY;
    private List<Double> leaves = List.of();

    Best(double wanted) {
      this.wanted = wanted;
    }

    void offer(List<Double> taken, double sum) {
      double away = Math.abs(sum - wanted);
      boolean same = Math.abs(away - off) <= SAME;
      if (same ? taken.size() < leaves.size() : away < off) {
        off = same ? Math.min(off, away) : away;
        leaves = List.copyOf(taken);
      }
    }
  }
}
