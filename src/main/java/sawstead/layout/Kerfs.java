package sawstead.layout;

/**
 * What each blade turns to dust, mm. The layout leaves room for the wider one everywhere.
 *
 * @param guided of the saw that runs along a guide rail, not negative
 * @param table of the table saw, not negative
 */
public record Kerfs(double guided, double table) {
  /** The same kerf for both saws. */
  public static Kerfs both(double kerf) {
    return new Kerfs(kerf, kerf);
  }

  /** The wider of the two. */
  public double wider() {
    return Math.max(guided, table);
  }

  /** Kerf of one tool. */
  public double of(Tool tool) {
    return tool == Tool.GUIDED ? guided : table;
  }
}
