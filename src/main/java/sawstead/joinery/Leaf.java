package sawstead.joinery;

import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * One leaf of a hinge.
 *
 * @param id of its body
 * @param box station box that it fills, mm
 * @param board that it lies on
 * @param inward direction from the leaf into the board
 */
record Leaf(String id, Box box, Board board, Heading inward) {
  Body body() {
    Vec size = box.size();
    return new Body(id, Solids.box(size.x(), size.y(), size.z()), Placement.at(box.low()));
  }
}
