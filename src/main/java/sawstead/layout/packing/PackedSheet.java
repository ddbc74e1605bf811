package sawstead.layout.packing;

/**
 * One sheet with its tiles.
 *
 * @param kind index into the problem's sheets
 * @param tile what the sheet is cut into; covers the sheet from its origin
 */
public record PackedSheet(int kind, Tile tile) {}
