package sawstead.layout;

/**
 * What each blade turns to dust, mm. The layout leaves room for the wider of one's own everywhere.
 *
 * @param guided of the saw that runs along a guide rail, not negative
 * @param table of the table saw, not negative
 * @param seller of the seller's saw, not negative
 */
public record Kerfs(double guided, double table, double seller) {
  /** Kerfs of one's own saws; no cut is the seller's. */
  public Kerfs(double guided, double table) {
    this(guided, table, 0);
  }

  /** The same kerf for both saws. */
  public static Kerfs both(double kerf) {
    return new Kerfs(kerf, kerf);
  }

  /** The wider of one's own two. */
  public double wider() {
    return Math.max(guided, table);
  }

  /** Kerf of one tool. */
  public double of(Tool tool) {
    return switch (tool) {
      case SELLER -> seller;
      case GUIDED -> guided;
      case TABLE -> table;
    };
  }
}
