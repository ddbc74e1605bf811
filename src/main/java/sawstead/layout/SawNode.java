package sawstead.layout;

import sawstead.layout.packing.Tile;

/** A piece of a sheet while it is sawn apart: finished, left over, or still to be cut. */
sealed interface SawNode {
  Region region();

  /** How many cuts take it apart. */
  default int cuts() {
    return this instanceof Sawn sawn
        ? 1
            + (sawn.near() == null ? 0 : sawn.near().cuts())
            + (sawn.far() == null ? 0 : sawn.far().cuts())
        : 0;
  }

  /** Exactly one finished piece. */
  record Finished(Region region, Tile.Piece piece) implements SawNode {}

  /** Nothing wanted in it. */
  record Left(Region region) implements SawNode {}

  /**
   * Cut in two, or made smaller when the blade runs off its edge.
   *
   * @param along direction in which the cut runs
   * @param at near side of the kerf
   * @param how what leads the cut
   * @param near what lies before the kerf, null when the blade takes it all
   * @param far what lies beyond the kerf, null when the blade takes it all
   */
  record Sawn(Region region, Direction along, int at, Guidance how, SawNode near, SawNode far)
      implements SawNode {}
}
