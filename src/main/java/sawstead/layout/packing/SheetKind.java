package sawstead.layout.packing;

/**
 * One size of sheet that may be cut.
 *
 * @param length extent along the length, in whole steps, positive
 * @param width extent along the width, in whole steps, positive
 * @param supply how many there are; {@link #ENDLESS} when they can be bought as needed, 0 when none
 *     is left
 * @param counted whether it counts as a sheet; what is left over from earlier work does not
 * @param price price of one, in whole money steps, not negative
 */
public record SheetKind(int length, int width, int supply, boolean counted, long price) {
  /** A supply that never runs out. */
  public static final int ENDLESS = Integer.MAX_VALUE;

  public SheetKind {
    if (length <= 0 || width <= 0 || supply < 0 || price < 0) {
      throw new IllegalArgumentException(
          "sheet " + length + " x " + width + " x " + supply + " at " + price + " is not possible");
    }
  }

  SheetKind withSupply(int left) {
    return new SheetKind(length, width, left, counted, price);
  }

  /** Area in square steps. */
  public long area() {
    return (long) length * width;
  }
}
