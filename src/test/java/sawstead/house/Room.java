package sawstead.house;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** The rooms, from the ground up, and the rooms that each may see. */
enum Room {
  MEASURE("a length knows nothing of what it measures"),
  FORMULA("a formula is a sum of numbers, whatever they measure"),
  SOLID("the kernel knows nothing of wood", MEASURE),
  SQUARING("the geometry of a fence knows no sled", MEASURE),
  DRAWING("a drawing is lines and words on layers, whatever they show", SOLID, MEASURE),
  JOINERY("a joint changes two panels and knows no station", SOLID, MEASURE),
  BRIEF("a brief mirrors the file and computes nothing", MEASURE),
  INTAKE("reading a file makes a brief and designs nothing", BRIEF, FORMULA, SOLID, MEASURE),
  STATION(
      "a station is designed without knowing how it will be judged",
      BRIEF,
      JOINERY,
      SOLID,
      MEASURE),
  ASSEMBLY(
      "an order of build is found without knowing how it will be judged",
      STATION,
      BRIEF,
      JOINERY,
      SOLID,
      MEASURE),
  CHECK(
      "a check looks at the solids and not at files",
      ASSEMBLY,
      STATION,
      BRIEF,
      JOINERY,
      SOLID,
      MEASURE),
  EXPORT(
      "a file format needs neither plans, books nor windows",
      CHECK,
      ASSEMBLY,
      STATION,
      BRIEF,
      JOINERY,
      DRAWING,
      SOLID,
      MEASURE),
  LAYOUT(
      "a cutting plan needs neither formats, books nor windows",
      CHECK,
      ASSEMBLY,
      STATION,
      BRIEF,
      JOINERY,
      DRAWING,
      SOLID,
      MEASURE),
  BOOK(
      "a book is written from the station, not from other files",
      CHECK,
      ASSEMBLY,
      STATION,
      BRIEF,
      JOINERY,
      DRAWING,
      SOLID,
      MEASURE),
  WALK("an interview asks about a brief and knows neither terminal nor window", INTAKE, MEASURE),
  PREVIEW(
      "the window sits on everything but the command line",
      WALK,
      BOOK,
      EXPORT,
      LAYOUT,
      CHECK,
      ASSEMBLY,
      STATION,
      INTAKE,
      BRIEF,
      JOINERY,
      DRAWING,
      SOLID,
      MEASURE),
  CLI(
      "the command line starts everything and nothing starts it",
      PREVIEW,
      WALK,
      BOOK,
      EXPORT,
      LAYOUT,
      CHECK,
      ASSEMBLY,
      STATION,
      INTAKE,
      BRIEF,
      JOINERY,
      SQUARING,
      DRAWING,
      SOLID,
      MEASURE);

  private final String reason;
  private final Set<Room> sees;

  Room(String reason, Room... sees) {
    this.reason = reason;
    this.sees = sees.length == 0 ? Set.of() : Set.copyOf(Arrays.asList(sees));
  }

  /** Why this room sees no more than it does. */
  String reason() {
    return reason;
  }

  /** The rooms that this one must not see. */
  Set<Room> unseen() {
    EnumSet<Room> others = EnumSet.allOf(Room.class);
    others.removeAll(sees);
    others.remove(this);
    return others;
  }

  /** The room's package and those below it, as ArchUnit writes them. */
  String packages(String house) {
    return house + "." + name().toLowerCase(Locale.ROOT) + "..";
  }
}
