package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solids;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Contact;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;
import sawstead.station.Station;

class PassagesTest {
  private static final Vec RIGHT = new Vec(1, 0, 0);

  private static Part cube(String id, double x, double y) {
    Body body = new Body(id, Solids.box(100, 100, 100), Placement.at(new Vec(x, y, 0)));
    return new Part(PartKind.ENVELOPE, Optional.empty(), 1, body);
  }

  private static Mover slide(String id, double way, Contact... contacts) {
    return new Mover(id + "-slides", List.of(id), new Slide(RIGHT, 0, way, 0), List.of(contacts));
  }

  private static Station station(List<Part> parts, List<Mover> movers) {
    Map<String, Part> byId = new TreeMap<>();
    parts.forEach(p -> byId.put(p.id(), p));
    return new Station(
        Sample.brief(),
        Optional.empty(),
        byId,
        Map.of(),
        List.of(),
        List.of(),
        movers,
        List.of(),
        Map.of(),
        List.of(),
        List.of());
  }

  private static Passage only(List<Part> parts, Mover... movers) {
    return Passages.of(station(parts, List.of(movers)), 0.05).get(0);
  }

  @Test
  void of_aClearSlide_tellsItsLeastClearance() {
    Passage passage = only(List.of(cube("a", 0, 0), cube("b", 150, 0)), slide("a", 20));
    assertTrue(passage.firstContact().isEmpty());
    assertEquals(30, passage.leastClearance().orElseThrow(), 0.005);
  }

  @Test
  void of_aSlideIntoAWall_tellsWhereItMeets() {
    Passage passage = only(List.of(cube("a", 0, 0), cube("b", 150, 0)), slide("a", 80));
    Passage.Contact contact = passage.firstContact().orElseThrow();
    assertEquals("b", contact.with());
    assertEquals("a", contact.mover());
    // The depth passes 0.001 mm that much after the faces meet.
    assertEquals(50.001, contact.at(), 1e-6);
    assertEquals(150, contact.point().x(), 0.1);
  }

  @Test
  void of_aTurnIntoAWall_tellsTheAngleOfGeometry() {
    // A bar of 200 x 10 turns about its end; its far upper edge meets a wall at x = 100 from above.
    Body bar = new Body("a", Solids.box(200, 10, 10), Placement.identity());
    Part mover = new Part(PartKind.PANEL, Optional.of("ply"), 1, bar);
    Part wall = cube("b", -250, -50);
    Mover turn =
        new Mover(
            "a-turns", List.of("a"), new Turn(Vec.ZERO, new Vec(0, 0, 1), 0, 180, 0), List.of());
    Passage.Contact contact = only(List.of(mover, wall), turn).firstContact().orElseThrow();
    // The wall is 100 high from y = -50: the bar's lower edge meets its corner (-150, 50).
    double expected = 180 - Math.toDegrees(Math.atan2(50, 150));
    double over = Math.toDegrees(Math.asin(10 / Math.hypot(50, 150)));
    assertEquals(expected - over, contact.at(), 0.01);
  }

  @Test
  void of_aSlideBehindAThingThatMoves_namesWhatMustMoveFirst() {
    List<Part> parts = List.of(cube("a", 0, 0), cube("b", 150, 0));
    Mover bolt =
        new Mover("b-slides", List.of("b"), new Slide(new Vec(0, 1, 0), 0, 120, 0), List.of());
    Passage passage = only(parts, slide("a", 80), bolt);
    assertTrue(passage.firstContact().isPresent());
    assertEquals(List.of("b-slides"), passage.after());
    Outcome outcome =
        new MotionCheck().judge(new Scene(station(parts, List.of(slide("a", 80), bolt))));
    assertEquals(List.of("note motion-order"), Sample.rules(outcome));
  }

  @Test
  void of_aSlideBehindAThingThatMovesTooLittle_isBlocked() {
    List<Part> parts = List.of(cube("a", 0, 0), cube("b", 150, 0));
    Mover bolt =
        new Mover("b-slides", List.of("b"), new Slide(new Vec(0, 1, 0), 0, 60, 0), List.of());
    assertEquals(List.of(), only(parts, slide("a", 80), bolt).after());
    Outcome outcome =
        new MotionCheck().judge(new Scene(station(parts, List.of(slide("a", 80), bolt))));
    assertEquals(List.of("stop motion-blocked"), Sample.rules(outcome));
  }

  /** A board of 100 that passes between two cubes only while the second is pushed aside. */
  @Test
  void of_aMotionInItsSetting_meetsWhatStandsThereThen() {
    Part board = cube("board", -200, 0);
    List<Part> parts = List.of(cube("b", 150, 0), cube("c", 400, 0));
    Mover aside =
        new Mover("b-slides", List.of("b"), new Slide(new Vec(0, 1, 0), 0, 120, 0), List.of());
    Mover feed =
        new Mover(
            "feed",
            List.of(),
            new Slide(RIGHT, 0, 900, 0),
            List.of(),
            Setting.aside(List.of("c")).and(Map.of("b-slides", 104.0)).with(List.of(board)));
    Passage clear = passage(parts, aside, feed);
    assertTrue(clear.firstContact().isEmpty());
    assertEquals(4, clear.leastClearance().orElseThrow(), 0.005);
    Passage met =
        passage(
            parts,
            aside,
            new Mover(
                "feed",
                List.of(),
                feed.motion(),
                List.of(),
                feed.setting().and(Map.of("b-slides", 99.0))));
    assertEquals("b", met.firstContact().orElseThrow().with());
    assertEquals(250.001, met.firstContact().orElseThrow().at(), 1e-6);
    // What stands aside for it is no motion that it could wait for.
    assertEquals(List.of(), met.after());
  }

  private static Passage passage(List<Part> parts, Mover... movers) {
    return Passages.of(station(parts, List.of(movers)), 0.05).stream()
        .filter(p -> p.mover().id().equals("feed"))
        .findFirst()
        .orElseThrow();
  }
}
