package sawstead.brief;

/**
 * A rectangle of a sheet that no panel may have.
 *
 * @param x near end along the face grain, mm from the lower left corner
 * @param y near end across it, mm
 * @param length extent along the face grain, mm
 * @param width extent across it, mm
 */
public record SheetDefect(double x, double y, double length, double width) {}
