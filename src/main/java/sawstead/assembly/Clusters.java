package sawstead.assembly;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sawstead.solid.Vec;

/**
 * Things that leave along a direction only together: strongly connected components of the graph "is
 * blocked by" (R. Tarjan, "Depth-first search and linear graph algorithms", 1972) from which no
 * edge leads out.
 */
final class Clusters {
  private final Blocking blocking;
  private final Vec direction;
  private final BitSet standing;
  private final Map<Integer, Integer> index = new HashMap<>();
  private final Map<Integer, Integer> low = new HashMap<>();
  private final Deque<Integer> stack = new ArrayDeque<>();
  private final BitSet onStack = new BitSet();
  private final List<BitSet> found = new ArrayList<>();

  private Clusters(Blocking blocking, Vec direction, BitSet standing) {
    this.blocking = blocking;
    this.direction = direction;
    this.standing = standing;
  }

  static List<BitSet> thatLeaveTogether(Blocking blocking, Vec direction, BitSet standing) {
    Clusters clusters = new Clusters(blocking, direction, standing);
    standing.stream().filter(t -> !clusters.index.containsKey(t)).forEach(clusters::visit);
    return clusters.found.stream()
        .filter(set -> blocking.isFree(set, direction, standing))
        .toList();
  }

  private void visit(int thing) {
    index.put(thing, index.size());
    low.put(thing, index.get(thing));
    stack.push(thing);
    onStack.set(thing);
    for (int other = standing.nextSetBit(0); other >= 0; other = standing.nextSetBit(other + 1)) {
      if (other == thing || !blocking.blocks(thing, direction, other)) {
        continue;
      }
      if (!index.containsKey(other)) {
        visit(other);
        low.merge(thing, low.get(other), Math::min);
      } else if (onStack.get(other)) {
        low.merge(thing, index.get(other), Math::min);
      }
    }
    if (low.get(thing).equals(index.get(thing))) {
      BitSet set = new BitSet();
      int member;
      do {
        member = stack.pop();
        onStack.clear(member);
        set.set(member);
      } while (member != thing);
      found.add(set);
    }
  }
}
