package sawstead.layout.packing;

/**
 * One size of rectangle that must be placed.
 *
 * @param length extent along the sheet's length when not turned, in whole steps, positive
 * @param width extent along the sheet's width when not turned, in whole steps, positive
 * @param mayTurn whether the rectangle may also be laid with its length along the sheet's width
 * @param demand how many copies must be placed, positive
 */
public record PieceKind(int length, int width, boolean mayTurn, int demand) {
  public PieceKind {
    if (length <= 0 || width <= 0 || demand <= 0) {
      throw new IllegalArgumentException(
          "piece " + length + " x " + width + " x " + demand + " is not positive");
    }
  }

  /** Area of one copy, in square steps. */
  public long area() {
    return (long) length * width;
  }

  /** Whether one copy fits an empty sheet of the given size. */
  public boolean fits(SheetKind sheet) {
    boolean upright = length <= sheet.length() && width <= sheet.width();
    return upright || (mayTurn && width <= sheet.length() && length <= sheet.width());
  }
}
