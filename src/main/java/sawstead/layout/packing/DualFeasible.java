package sawstead.layout.packing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A dual feasible function on the extents 0..capacity: whenever extents fit the capacity side by
 * side, their values sum to at most 1. Values are kept per extent asked for.
 *
 * <p>Sources: u(k), U(e) and phi(e) of Fekete and Schepers 2001 (new classes of fast lower bounds
 * for bin packing problems); f2 of Carlier, Clautiaux and Moukrim 2007.
 */
interface DualFeasible {
  double value(int extent);

  /** Most thresholds taken from the pieces, so that the bound stays quick on long lists. */
  int THRESHOLDS = 40;

  /** Functions worth trying for a capacity and the extents that occur. */
  static List<DualFeasible> family(int capacity, int[] extents) {
    Set<Integer> thresholds = new TreeSet<>();
    for (int extent : extents) {
      if (extent <= capacity) {
        addThreshold(thresholds, extent, capacity);
        addThreshold(thresholds, capacity - extent, capacity);
        addThreshold(thresholds, extent + 1, capacity);
        addThreshold(thresholds, capacity - extent + 1, capacity);
      }
    }
    List<DualFeasible> family = new ArrayList<>();
    family.add(extent -> (double) extent / capacity);
    for (int k = 1; k <= 12; k++) {
      family.add(stepped(capacity, k));
    }
    for (int e : thin(thresholds)) {
      family.add(rounded(capacity, e));
      family.add(counted(capacity, e));
      family.add(gridded(capacity, e));
    }
    return family;
  }

  private static void addThreshold(Set<Integer> thresholds, int e, int capacity) {
    if (e > 0 && e <= capacity / 2) {
      thresholds.add(e);
    }
  }

  private static Set<Integer> thin(Set<Integer> thresholds) {
    if (thresholds.size() <= THRESHOLDS) {
      return thresholds;
    }
    List<Integer> all = new ArrayList<>(thresholds);
    Set<Integer> some = new LinkedHashSet<>();
    for (int i = 0; i < THRESHOLDS; i++) {
      some.add(all.get((int) ((long) i * (all.size() - 1) / (THRESHOLDS - 1))));
    }
    return some;
  }

  /** u(k): rounds down to k-ths, except where (k + 1) x is a whole multiple of the capacity. */
  private static DualFeasible stepped(int capacity, int k) {
    return x -> {
      long scaled = (long) (k + 1) * x;
      return scaled % capacity == 0 ? (double) x / capacity : (double) (scaled / capacity) / k;
    };
  }

  /** U(e): small extents count nothing, extents that leave only small room count all. */
  private static DualFeasible rounded(int capacity, int e) {
    return x -> x > capacity - e ? 1 : x < e ? 0 : (double) x / capacity;
  }

  /** phi(e): counts how many extents of at least e find room. */
  private static DualFeasible counted(int capacity, int e) {
    int most = capacity / e;
    return x -> {
      if (2L * x > capacity) {
        return 1 - (double) ((capacity - x) / e) / most;
      }
      return x >= e ? 1.0 / most : 0;
    };
  }

  /** f2(e): whole multiples of e, rounded up above half of the capacity. */
  private static DualFeasible gridded(int capacity, int e) {
    int most = capacity / e;
    return x -> {
      if (2L * x == capacity) {
        return 0.5;
      }
      return 2L * x > capacity
          ? (double) (most - (capacity - x) / e) / most
          : (double) (x / e) / most;
    };
  }
}
