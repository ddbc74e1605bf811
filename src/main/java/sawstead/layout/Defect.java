package sawstead.layout;

/**
 * A place on a sheet that no part may have: a knot, a dent, a split edge.
 *
 * @param x near end along the sheet's length, mm
 * @param y near end along its width, mm
 * @param length extent along the length, mm
 * @param width extent along the width, mm
 */
public record Defect(double x, double y, double length, double width) {
  boolean meets(double otherX, double otherY, double otherLength, double otherWidth) {
    return otherX < x + length
        && x < otherX + otherLength
        && otherY < y + width
        && y < otherY + otherWidth;
  }
}
