package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Few large convex pieces that may overlap and whose union is the solid.
 *
 * <p>For each column and level not yet covered, largest first: take the whole unbroken run of
 * levels, and grow a convex region around the column within everything that has material throughout
 * the run ({@link Growth}). All that lies in the new piece is covered. A piece thinner than {@link
 * #THIN} is tried again over its level alone and around parts of its seed, and kept only where that
 * fails.
 *
 * <p>Certified: every piece lies in the solid to {@link #SLACK}, and every column lies in some
 * piece to the same. Heuristic: how few and how thick they are.
 */
final class Cover {
  /**
   * How far a piece may reach beyond the solid, or fall short of it: four steps of the grid, mm.
   */
  static final double SLACK = 4 * Slabs.GRID;

  /** Pieces are no thinner than this, mm, unless the solid is. */
  static final double THIN = 0.1;

  private final Slabs slabs;
  private final Plan plan;
  private final BitSet[] open;
  private final Map<Long, Growth> regions = new HashMap<>();
  private final List<Piece> pieces = new ArrayList<>();

  private Cover(Slabs slabs) {
    this.slabs = slabs;
    this.plan = slabs.plan();
    open = plan.columns().stream().map(c -> (BitSet) c.clone()).toArray(BitSet[]::new);
  }

  static List<Piece> of(Slabs slabs) {
    Cover cover = new Cover(slabs);
    java.util.stream.IntStream.range(0, cover.plan.size())
        .boxed()
        .sorted((s, t) -> Double.compare(cover.plan.area(t), cover.plan.area(s)))
        .forEach(cover::coverColumn);
    return cover.pieces;
  }

  private void coverColumn(int t) {
    for (int k = open[t].nextSetBit(0); k >= 0; k = open[t].nextSetBit(k)) {
      BitSet column = plan.columns().get(t);
      int first = column.previousClearBit(k) + 1;
      int last = column.nextClearBit(k);
      double[] seed = Growth.seed(plan, t);
      Wedge wide = region(first, last).around(seed);
      if (Growth.width(wide) >= THIN) {
        keep(wide, first, last);
      } else {
        keepThin(seed, wide, first, last, k);
      }
      open[t].clear(k);
    }
  }

  private void keepThin(double[] seed, Wedge wide, int first, int last, int level) {
    Wedge alone = region(level, level + 1).around(seed);
    boolean tall = slabs.heights()[level + 1] - slabs.heights()[level] >= THIN;
    if (tall && Growth.width(alone) >= THIN) {
      keep(alone, level, level + 1);
      return;
    }
    List<Wedge> parts = new ArrayList<>();
    if (!region(first, last).aroundParts(seed, THIN, parts)) {
      keep(wide, first, last);
    }
    parts.forEach(part -> keep(part, first, last));
  }

  private Growth region(int first, int last) {
    return regions.computeIfAbsent(((long) first << 32) | last, k -> new Growth(plan, first, last));
  }

  private void keep(Wedge wedge, int first, int last) {
    double[] corners = wedge.corners(Slabs.GRID);
    if (corners.length < 15) {
      return;
    }
    pieces.add(Piece.prismOf(corners, slabs.heights()[first], slabs.heights()[last]));
    for (int t = 0; t < plan.size(); t++) {
      if (!open[t].isEmpty() && Growth.holds(wedge, plan, t)) {
        open[t].clear(first, last);
      }
    }
  }
}
