package sawstead.layout;

/**
 * Sheets of one size, or an offcut at hand.
 *
 * @param name unique name, printed on the plan
 * @param board name of the {@link Board}
 * @param length extent along the grain, mm, factory edges included
 * @param width extent across the grain, mm
 * @param quantity how many there are, or {@link #ENDLESS}
 * @param price of one, in the user's money
 * @param trim what is cut away at each of the four edges, the blade included, mm; 0 for none
 * @param offcut left from earlier work: used before a new sheet, and not counted as one
 * @param where where the stock is written down, for messages
 */
public record Stock(
    String name,
    String board,
    double length,
    double width,
    int quantity,
    double price,
    double trim,
    boolean offcut,
    String where) {
  /** As many as needed can be bought. */
  public static final int ENDLESS = Integer.MAX_VALUE;

  /** A sheet that can be bought as needed, without a price. */
  public static Stock sheet(String name, String board, double length, double width, double trim) {
    return new Stock(name, board, length, width, ENDLESS, 0, trim, false, name);
  }

  /** Extent along the length between the trimmed edges, mm. */
  double usableLength() {
    return length - 2 * trim;
  }

  /** Extent along the width between the trimmed edges, mm. */
  double usableWidth() {
    return width - 2 * trim;
  }
}
