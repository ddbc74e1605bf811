package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Feed;
import sawstead.brief.Room;
import sawstead.brief.Side;
import sawstead.brief.State;

/** Reads the {@code room}, the {@code feeds} and the {@code states}. */
final class RoomMapper {

  private final Section brief;
  private final Section room;

  RoomMapper(Section brief) {
    this.brief = brief;
    room = brief.section("room");
  }

  Optional<Room> room() {
    if (!brief.has("room")) {
      return Optional.empty();
    }
    Room read =
        new Room(
            room.wish("left"),
            room.wish("right"),
            room.wish("front"),
            room.wish("rear"),
            room.measure("height"),
            blocks("posts"),
            door(),
            blocks("standIns"),
            room.wish("rolledBack"));
    read.door()
        .filter(d -> read.wall(d.wall()).isEmpty() && !room.isBad("door"))
        .ifPresent(
            d ->
                room.problem(
                    "door",
                    "the door is in the " + d.wall().word() + " wall, which the room does not have",
                    "add `" + d.wall().word() + ": ` with its distance, or remove the door"));
    return Optional.of(read);
  }

  private List<Room.Block> blocks(String key) {
    Duplicates ids = new Duplicates();
    List<Room.Block> blocks = new ArrayList<>();
    for (Section block : room.sections(key)) {
      blocks.add(
          new Room.Block(
              ids.fresh(block, "id"),
              block.measure("x"),
              block.measure("y"),
              block.measure("width"),
              block.measure("depth")));
    }
    return blocks;
  }

  private Optional<Room.Door> door() {
    if (!room.has("door") || room.is("door", "none")) {
      return Optional.empty();
    }
    Section door = room.section("door");
    Side wall = door.word("wall", Side.class, Side.LEFT);
    Side hinge = door.word("hinge", Side.class, Side.LEFT);
    if (alongX(wall) == alongX(hinge) && !door.isBad("hinge") && !door.isBad("wall")) {
      door.problem(
          "hinge",
          "a door in the " + wall.word() + " wall cannot hang at its " + hinge.word() + " end",
          "write `hinge: " + (alongX(wall) ? "left` or `right`" : "front` or `rear`"));
    }
    return Optional.of(
        new Room.Door(
            wall,
            door.measure("at"),
            door.measure("width"),
            door.measure("height"),
            hinge,
            !door.text("opens").orElse("in").equals("out")));
  }

  private static boolean alongX(Side wall) {
    return wall == Side.FRONT || wall == Side.REAR;
  }

  /** The boards named; empty when the brief leaves them to habit. */
  Optional<List<Feed>> feeds() {
    if (!brief.has("feeds")) {
      return Optional.empty();
    }
    Duplicates ids = new Duplicates();
    List<Feed> feeds = new ArrayList<>();
    for (Section feed : brief.sections("feeds")) {
      feeds.add(
          new Feed(
              ids.fresh(feed, "id"),
              feed.word("cut", Feed.Cut.class, Feed.Cut.RIP),
              feed.measure("length"),
              feed.measure("width"),
              feed.measure("thickness"),
              feed.wish("keep")));
    }
    return Optional.of(feeds);
  }

  List<State> states() {
    Duplicates ids = new Duplicates();
    List<State> states = new ArrayList<>();
    for (Section state : brief.sections("states")) {
      states.add(
          new State(
              ids.fresh(state, "id"),
              state.text("moves").orElse(""),
              state.entries("while").stream()
                  .map(Section.Entry::item)
                  .filter(item -> item instanceof Item.Scalar)
                  .map(item -> ((Item.Scalar) item).text())
                  .toList()));
    }
    return states;
  }
}
