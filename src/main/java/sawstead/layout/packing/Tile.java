package sawstead.layout.packing;

import java.util.List;

/**
 * A rectangle of a finished packing: a piece, or a row of tiles cut apart by parallel cuts.
 *
 * <p>Extents are in the steps of the problem. Tiles of a row follow one another from the row's near
 * end without gaps, all with the row's extent across; {@code slack} is what is left at its far end.
 * Rows in rows alternate in direction.
 */
public sealed interface Tile {
  /** Extent along the sheet's length. */
  int length();

  /** Extent along the sheet's width. */
  int width();

  /**
   * One copy of a piece.
   *
   * @param kind index into the problem's pieces
   * @param turned whether it lies with its length along the sheet's width
   * @param length extent along the sheet's length as placed
   * @param width extent along the sheet's width as placed
   */
  record Piece(int kind, boolean turned, int length, int width) implements Tile {}

  /**
   * Tiles one after another.
   *
   * @param alongLength whether they follow one another along the sheet's length
   * @param length extent along the sheet's length
   * @param width extent along the sheet's width
   * @param parts the tiles in order
   * @param slack free extent after the last tile
   */
  record Row(boolean alongLength, int length, int width, List<Tile> parts, int slack)
      implements Tile {
    public Row {
      parts = List.copyOf(parts);
    }
  }
}
