package sawstead.layout;

import java.util.List;

/**
 * What is cut away at each edge of a sheet, the blade included, mm.
 *
 * @param left at the near end of the length
 * @param right at its far end
 * @param bottom at the near end of the width
 * @param top at its far end
 */
record Trim(double left, double right, double bottom, double top) {
  static Trim all(double trim) {
    return new Trim(trim, trim, trim, trim);
  }

  /**
   * The least that must go so that no defect is left in the middle: each is cut away with all that
   * lies between it and one edge, which edge being tried for all of them. What lies beyond a defect
   * is not used; that is the price of cuts from edge to edge that stay few.
   */
  static Trim around(Trim edges, double length, double width, List<Defect> defects) {
    for (int i = 0; i < defects.size(); i++) {
      Defect d = defects.get(i);
      double usableLength = length - edges.left - edges.right;
      double usableWidth = width - edges.bottom - edges.top;
      if (d.meets(edges.left, edges.bottom, usableLength, usableWidth)) {
        Trim best = null;
        for (Trim away : edges.without(d, length, width)) {
          Trim whole = around(away, length, width, defects.subList(i + 1, defects.size()));
          best =
              best == null || whole.area(length, width) > best.area(length, width) ? whole : best;
        }
        return best;
      }
    }
    return edges;
  }

  private List<Trim> without(Defect d, double length, double width) {
    return List.of(
        new Trim(Math.max(left, d.x() + d.length()), right, bottom, top),
        new Trim(left, Math.max(right, length - d.x()), bottom, top),
        new Trim(left, right, Math.max(bottom, d.y() + d.width()), top),
        new Trim(left, right, bottom, Math.max(top, width - d.y())));
  }

  private double area(double length, double width) {
    return Math.max(0, length - left - right) * Math.max(0, width - bottom - top);
  }
}
