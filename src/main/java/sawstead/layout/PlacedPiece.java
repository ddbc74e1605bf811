package sawstead.layout;

/**
 * A finished piece on its sheet.
 *
 * @param part name of the part
 * @param x corner nearest the sheet's origin, along the length, mm
 * @param y the same, along the width, mm
 * @param length extent along the sheet's length as placed, mm
 * @param width extent along the sheet's width as placed, mm
 * @param turned whether the part's length lies along the sheet's width
 */
public record PlacedPiece(
    String part, double x, double y, double length, double width, boolean turned) {}
