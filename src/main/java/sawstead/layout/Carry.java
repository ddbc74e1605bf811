package sawstead.layout;

/**
 * What one person brings home in one piece. The seller's saw is neither exact nor clean, so that
 * both sides of its cut are cut again at home.
 *
 * @param longest longest side, mm
 * @param widest other side, mm
 * @param heaviest mass, kg
 * @param oversize what is left to be cut away at home at each edge that the seller cut, mm
 */
public record Carry(double longest, double widest, double heaviest, double oversize) {
  /** More pieces to a side than this and nobody would go by car, or the limits are a mistake. */
  private static final int MOST = 12;

  /**
   * A sheet cut into equal pieces.
   *
   * @param along how many lie one after another along the length
   * @param across how many lie beside one another across the width
   */
  record Grid(int along, int across) {}

  /** The fewest equal pieces of a sheet that can be carried; the whole when none can. */
  Grid fewest(Board board, double length, double width) {
    Grid best = new Grid(1, 1);
    int fewest = Integer.MAX_VALUE;
    for (int across = 1; across <= MOST; across++) {
      for (int along = 1; along <= MOST; along++) {
        if (along * across < fewest && takes(board, length / along, width / across)) {
          best = new Grid(along, across);
          fewest = along * across;
        }
      }
    }
    return best;
  }

  /** What a seller's cut takes of a sheet: his kerf, and the oversize on both sides of it, mm. */
  double lost(Kerfs kerfs) {
    return kerfs.seller() + 2 * oversize;
  }

  /** Whether a piece of a board can be carried. */
  boolean takes(Board board, double length, double width) {
    return Math.max(length, width) <= longest
        && Math.min(length, width) <= widest
        && board.mass(length, width) <= heaviest;
  }
}
