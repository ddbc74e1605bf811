package sawstead.joinery;

import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Vec;

/**
 * Air of a bore at an angle or into an edge, its ends rounded.
 *
 * @param rod in the board's frame
 */
record RodAir(Rod rod) implements Air {
  /** A bore of this diameter from a point inward. */
  static RodAir bored(Vec at, Vec direction, double diameter, double depth) {
    return new RodAir(new Rod(at, at.plus(direction.scale(depth)), diameter / 2));
  }

  @Override
  public double distance(Vec from, Vec to) {
    return Math.max(0, Segments.distance(from, to, rod.from(), rod.to()) - rod.radius());
  }

  @Override
  public boolean isBeyond(Vec from, Vec to, double distance) {
    return rod.isBeyond(new Rod(from, to, distance));
  }

  @Override
  public Body body(String id, Placement board) {
    return rod.cylinder(id, board);
  }
}
