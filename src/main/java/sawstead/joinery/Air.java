package sawstead.joinery;

import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/** Room that a cut leaves empty, in the local frame of its board. */
interface Air {
  /** Distance from the segment between two points to the air, mm; 0 when they meet. */
  double distance(Vec from, Vec to);

  /**
   * Whether the air is farther than that from the segment, as far as boxes around both can tell:
   * true is certain, false says nothing.
   */
  boolean isBeyond(Vec from, Vec to, double distance);

  /**
   * The air as a body, as if it were material; round things as polygons around them.
   *
   * @param id of the body
   * @param board placement of the board
   */
  Body body(String id, Placement board);
}
