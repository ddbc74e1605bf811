package sawstead.layout;

/**
 * A rectangle left over that is large enough to keep.
 *
 * @param stock name of the stock it comes from
 * @param sheet number of the sheet in the plan, from 1
 * @param x corner nearest the sheet's origin, along the length, mm
 * @param y the same, along the width, mm
 * @param length extent along the grain, mm
 * @param width extent across the grain, mm
 */
public record Offcut(String stock, int sheet, double x, double y, double length, double width) {
  /** Area, mm². */
  public double area() {
    return length * width;
  }
}
