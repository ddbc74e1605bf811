package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * The room that the station stands in, from the operator's place. A side that is empty has no wall.
 *
 * @param left from the blade plane to the wall on the left, mm
 * @param right from the blade plane to the wall on the right, mm
 * @param front from the table's front edge to the wall at the operator's back, mm
 * @param rear from the table's front edge to the wall behind the saw, mm
 * @param height floor to ceiling, mm
 * @param posts what stands from floor to ceiling
 * @param door a door in one of the walls
 * @param standIns what carries a board beside the station
 * @param rolledBack how far the station is rolled toward the rear wall when it is put away, mm
 */
public record Room(
    Optional<Measured> left,
    Optional<Measured> right,
    Optional<Measured> front,
    Optional<Measured> rear,
    Measured height,
    List<Block> posts,
    Optional<Door> door,
    List<Block> standIns,
    Optional<Measured> rolledBack) {
  public Room {
    requireNonNull(left, "left");
    requireNonNull(right, "right");
    requireNonNull(front, "front");
    requireNonNull(rear, "rear");
    requireNonNull(height, "height");
    posts = List.copyOf(posts);
    requireNonNull(door, "door");
    standIns = List.copyOf(standIns);
    requireNonNull(rolledBack, "rolledBack");
  }

  /** The wall on that side. */
  public Optional<Measured> wall(Side side) {
    return switch (side) {
      case LEFT -> left;
      case RIGHT -> right;
      case FRONT -> front;
      case REAR -> rear;
      case BELOW -> Optional.empty();
    };
  }

  /**
   * Something upright of a rectangular plan.
   *
   * @param id short name
   * @param x its middle from the blade plane, mm
   * @param y its middle from the table's front edge, mm
   * @param width along x, mm
   * @param depth along y, mm
   */
  public record Block(String id, Measured x, Measured y, Measured width, Measured depth) {
    public Block {
      requireNonNull(id, "id");
      requireNonNull(x, "x");
      requireNonNull(y, "y");
      requireNonNull(width, "width");
      requireNonNull(depth, "depth");
    }
  }

  /**
   * A door.
   *
   * @param wall LEFT, RIGHT, FRONT or REAR
   * @param at its middle along the wall, from the blade plane or from the table's front edge, mm
   * @param width mm
   * @param height mm
   * @param hinge the end it hangs at: LEFT or RIGHT in a front or rear wall, else FRONT or REAR
   * @param inward whether it opens into the room
   */
  public record Door(
      Side wall, Measured at, Measured width, Measured height, Side hinge, boolean inward) {
    public Door {
      requireNonNull(wall, "wall");
      requireNonNull(at, "at");
      requireNonNull(width, "width");
      requireNonNull(height, "height");
      requireNonNull(hinge, "hinge");
    }
  }
}
