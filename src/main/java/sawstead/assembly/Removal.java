package sawstead.assembly;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import sawstead.solid.Vec;

/**
 * One thing, or several held together, taken off what stands.
 *
 * @param movers what comes off
 * @param standing what stands before, movers included; on a bench only what lies there
 * @param group that it belongs to
 * @param legs translations, each a direction and a length in one vector, mm; a single one ends far
 *     away; empty when no way is known
 * @param together true when these things of several groups only come off together
 * @param tilt degrees by which it is tipped first; 0 when it leaves as it stands
 * @param because what stood in the way as long as it stood; empty when nothing did
 */
record Removal(
    BitSet movers,
    BitSet standing,
    Group group,
    List<Vec> legs,
    boolean together,
    double tilt,
    Optional<Obstacle> because) {

  /**
   * What stood in the way of a group.
   *
   * @param things in the way
   * @param ofTools true when in the way of a tool, else of the group itself
   */
  record Obstacle(BitSet things, boolean ofTools) {}

  Removal {
    legs = List.copyOf(legs);
  }
}
