package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Disjoint convex pieces of slabs. Triangles with equal columns are joined across an edge (or a
 * chain of edges) wherever both ends stay convex, in the manner of S. Hertel and K. Mehlhorn, "Fast
 * triangulation of the plane with respect to simple polygons" (1985); each polygon is then raised
 * over each unbroken run of its levels. Corners are compared exactly.
 */
final class Partition {
  private final Plan plan;
  private final int[] next;
  private final int[] previous;
  private final int[] twins;
  private final boolean[] gone;

  private Partition(Plan plan) {
    this.plan = plan;
    int n = plan.triangles().length;
    next = new int[n];
    previous = new int[n];
    gone = new boolean[n];
    for (int h = 0; h < n; h++) {
      next[h] = Plan.next(h);
      previous[next[h]] = h;
    }
    twins = plan.twins();
  }

  static List<Piece> of(Slabs slabs) {
    Partition partition = new Partition(slabs.plan());
    for (int h = 0; h < partition.next.length; h++) {
      partition.tryJoin(h);
    }
    return partition.pieces(slabs.heights());
  }

  private void tryJoin(int h) {
    int t = twins[h];
    if (t < h || gone[h] || !sameColumn(h, t)) {
      return;
    }
    int first = h;
    while (twins[previous[first]] == next[twins[first]] && previous[first] != h) {
      first = previous[first];
    }
    int last = h;
    while (twins[next[last]] == previous[twins[last]] && next[last] != first) {
      last = next[last];
    }
    if (!staysConvex(previous[first], next[twins[first]])
        || !staysConvex(previous[twins[last]], next[last])) {
      return;
    }
    int before = previous[first];
    int after = next[last];
    int beforeTwin = previous[twins[last]];
    int afterTwin = next[twins[first]];
    for (int k = first; k != after; k = next[k]) {
      gone[k] = true;
      gone[twins[k]] = true;
    }
    link(before, afterTwin);
    link(beforeTwin, after);
  }

  private void link(int h, int then) {
    next[h] = then;
    previous[then] = h;
  }

  private boolean sameColumn(int h, int t) {
    return plan.columns().get(h / 3).equals(plan.columns().get(t / 3));
  }

  private boolean staysConvex(int in, int out) {
    return plan.turn(from(in), from(out), from(next[out])) >= 0;
  }

  private int from(int h) {
    return plan.triangles()[h];
  }

  private List<Piece> pieces(double[] heights) {
    List<Piece> pieces = new ArrayList<>();
    boolean[] done = new boolean[next.length];
    for (int h = 0; h < next.length; h++) {
      if (!gone[h] && !done[h]) {
        double[] uv = polygon(h, done);
        BitSet column = plan.columns().get(h / 3);
        for (int k = column.nextSetBit(0); k >= 0; k = column.nextSetBit(k)) {
          int end = column.nextClearBit(k);
          pieces.add(Piece.prism(uv, heights[k], heights[end]));
          k = end;
        }
      }
    }
    return pieces;
  }

  /** Corners of a joined polygon, without those in line with their neighbours. */
  private double[] polygon(int start, boolean[] done) {
    List<Integer> corners = new ArrayList<>();
    int h = start;
    do {
      done[h] = true;
      if (plan.turn(from(previous[h]), from(h), from(next[h])) != 0) {
        corners.add(from(h));
      }
      h = next[h];
    } while (h != start);
    double[] uv = new double[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      uv[2 * i] = plan.u(corners.get(i));
      uv[2 * i + 1] = plan.v(corners.get(i));
    }
    return uv;
  }
}
