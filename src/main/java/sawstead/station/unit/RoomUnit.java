package sawstead.station.unit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import sawstead.brief.Room;
import sawstead.brief.Side;
import sawstead.joinery.Board;
import sawstead.measure.Measured;
import sawstead.solid.Body;
import sawstead.solid.Opening;
import sawstead.solid.Outline;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;
import sawstead.station.Site;
import sawstead.station.Unit;

/**
 * The room as bodies: walls, posts, the door and what carries a board beside the station. The door
 * opens, and the station rolls back to where it is put away, its leaf folded. Comes after all units
 * that place something, because it moves them all.
 */
final class RoomUnit implements Unit {

  /** Thickness of a wall, mm: more than anything moves through it unseen. */
  private static final double WALL = 100;

  /** Where there is no wall the others go on this far from the blade and the table's edge, mm. */
  private static final double BEYOND = 4000;

  /** Thickness of a door and its play in the opening, mm (common practice, no source). */
  private static final double DOOR = 40;

  private static final double DOOR_PLAY = 3;
  private static final double DOOR_OPEN = 90;

  private static final Vec UP = new Vec(0, 0, 1);

  private final Site site;
  private final Room room;
  private final Area inside;
  private final double height;

  RoomUnit(Site site, Room room) {
    this.site = site;
    this.room = room;
    inside = inside(room);
    height = room.height().nominal();
  }

  /** The floor between the walls; far away where there is none. */
  static Area inside(Room room) {
    return new Area(
        -room.left().map(Measured::nominal).orElse(BEYOND),
        room.right().map(Measured::nominal).orElse(BEYOND),
        -room.front().map(Measured::nominal).orElse(BEYOND),
        room.rear().map(Measured::nominal).orElse(BEYOND));
  }

  @Override
  public void place(Draft draft) {
    for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.FRONT, Side.REAR)) {
      if (room.wall(side).isPresent()) {
        placeWall(draft, side);
      }
    }
    room.posts().forEach(p -> draft.envelope(id(p), area(p).between(0, height), 0));
    room.standIns()
        .forEach(p -> draft.envelope(id(p), area(p).between(0, site.levels().lowestTable()), 0));
    room.door().ifPresent(d -> placeDoor(draft, d));
  }

  private static String id(Room.Block block) {
    return "room/" + block.id();
  }

  private static Area area(Room.Block block) {
    double x = block.x().nominal();
    double y = block.y().nominal();
    double w = block.width().nominal() / 2;
    double d = block.depth().nominal() / 2;
    return new Area(x - w, x + w, y - d, y + d);
  }

  /** The frame of a wall: u along it, v up, w out of the room; its origin inside at the floor. */
  private Placement frame(Side side) {
    return switch (side) {
      case LEFT -> frame(inside.left(), inside.rear(), new Vec(0, -1, 0));
      case RIGHT -> frame(inside.right(), inside.front(), new Vec(0, 1, 0));
      case REAR -> frame(inside.right() + WALL, inside.rear(), new Vec(-1, 0, 0));
      default -> frame(inside.left() - WALL, inside.front(), new Vec(1, 0, 0));
    };
  }

  private static Placement frame(double x, double y, Vec along) {
    return Placement.of(new Vec(x, y, 0), along, UP);
  }

  private static boolean alongX(Side side) {
    return side == Side.FRONT || side == Side.REAR;
  }

  private void placeWall(Draft draft, Side side) {
    double length = alongX(side) ? inside.width() + 2 * WALL : inside.depth();
    Panel wall = new Panel(Outline.rectangle(0, 0, length, height), WALL);
    if (room.door().isPresent() && room.door().get().wall() == side) {
      Room.Door door = room.door().get();
      double from = alongWall(door);
      wall =
          wall.with(
              new Opening(
                  Outline.rectangle(
                      from,
                      -WALL,
                      from + door.width().nominal(),
                      Math.min(door.height().nominal(), height - 1))));
    }
    draft.body(PartKind.ENVELOPE, "room/wall-" + side.word(), wall, frame(side), 0);
  }

  /** Where the opening begins along its wall's u, mm. */
  private double alongWall(Room.Door door) {
    Placement frame = frame(door.wall());
    double middle =
        alongX(door.wall())
            ? (door.at().nominal() - frame.origin().x()) * frame.u().x()
            : (door.at().nominal() - frame.origin().y()) * frame.u().y();
    return middle - door.width().nominal() / 2;
  }

  private void placeDoor(Draft draft, Room.Door door) {
    Placement frame = frame(door.wall());
    double from = alongWall(door) + DOOR_PLAY;
    double width = door.width().nominal() - 2 * DOOR_PLAY;
    double high = Math.min(door.height().nominal(), height - 1) - 2 * DOOR_PLAY;
    Vec origin = frame.apply(new Vec(from, DOOR_PLAY, 0));
    draft.body(
        PartKind.ENVELOPE,
        "room/door",
        Solids.box(width, high, DOOR),
        new Placement(frame.u(), frame.v(), frame.w(), origin),
        0);
    if (door.inward()) {
      Vec towards = towards(door.hinge());
      boolean atStart = frame.u().dot(towards) < 0;
      Vec pin = frame.apply(new Vec(atStart ? from : from + width, 0, 0));
      Vec leaf = towards.scale(-1);
      double sense = leaf.cross(frame.w().scale(-1)).dot(UP);
      draft.mover(
          new Mover(
              "room/door-opens",
              List.of("room/door"),
              new Turn(pin, UP.scale(sense), 0, DOOR_OPEN, 0),
              List.of()));
    }
  }

  private static Vec towards(Side side) {
    return switch (side) {
      case LEFT -> new Vec(-1, 0, 0);
      case RIGHT -> new Vec(1, 0, 0);
      case REAR -> new Vec(0, 1, 0);
      default -> new Vec(0, -1, 0);
    };
  }

  @Override
  public void join(Draft draft) {
    if (room.rolledBack().isEmpty()) {
      return;
    }
    List<String> all =
        Stream.concat(
                draft.boards().stream().map(Board::id),
                draft.bodies().stream().filter(p -> !p.isRoom()).map(Part::body).map(Body::id))
            .sorted()
            .toList();
    Map<String, Double> folded = new TreeMap<>();
    draft.movers().stream()
        .filter(m -> m.id().equals(OutfeedLeaf.FOLDS))
        .forEach(m -> folded.put(m.id(), m.motion().to()));
    draft.mover(
        new Mover(
            "room/station-rolls-back",
            all,
            new Slide(new Vec(0, 1, 0), 0, room.rolledBack().get().nominal(), 0),
            List.of(),
            Setting.meanwhile(folded)));
  }
}
