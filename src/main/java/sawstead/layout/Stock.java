package sawstead.layout;

import java.util.List;

/**
 * Sheets of one size, or an offcut at hand.
 *
 * @param name unique name, printed on the plan
 * @param board name of the {@link Board}
 * @param length extent along the grain, mm, factory edges included
 * @param width extent across the grain, mm
 * @param quantity how many there are, or {@link #ENDLESS}
 * @param price of one, in the user's money
 * @param edge what is cut away at each of the four edges, the blade included, mm; 0 for none
 * @param offcut left from earlier work: used before a new sheet, and not counted as one
 * @param where where the stock is written down, for messages
 * @param defects places that no part may have
 */
public record Stock(
    String name,
    String board,
    double length,
    double width,
    int quantity,
    double price,
    double edge,
    boolean offcut,
    String where,
    List<Defect> defects) {
  public Stock {
    defects = List.copyOf(defects);
  }

  /** Stock without defects. */
  public Stock(
      String name,
      String board,
      double length,
      double width,
      int quantity,
      double price,
      double edge,
      boolean offcut,
      String where) {
    this(name, board, length, width, quantity, price, edge, offcut, where, List.of());
  }

  /** As many as needed can be bought. */
  public static final int ENDLESS = Integer.MAX_VALUE;

  /** A sheet that can be bought as needed, without a price. */
  public static Stock sheet(String name, String board, double length, double width, double trim) {
    return new Stock(name, board, length, width, ENDLESS, 0, trim, false, name);
  }

  /** What is cut away all round, defects included. */
  Trim trim() {
    return Trim.around(Trim.all(edge), length, width, defects);
  }

  /** Extent along the length between the trimmed edges, mm. */
  double usableLength() {
    Trim trim = trim();
    return length - trim.left() - trim.right();
  }

  /** Extent along the width between the trimmed edges, mm. */
  double usableWidth() {
    Trim trim = trim();
    return width - trim.bottom() - trim.top();
  }
}
