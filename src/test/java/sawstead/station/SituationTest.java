package sawstead.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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

class SituationTest {
  private static final Vec RIGHT = new Vec(1, 0, 0);
  private static final Vec UP = new Vec(0, 0, 1);

  private static Part cube(String id, double x) {
    return new Part(
        PartKind.ENVELOPE,
        Optional.empty(),
        1,
        new Body(id, Solids.box(100, 100, 100), Placement.at(new Vec(x, 0, 0))));
  }

  private static Mover slide(String id, Setting setting) {
    return new Mover(id + "-slides", List.of(id), new Slide(RIGHT, 0, 50, 0), List.of(), setting);
  }

  private static Station station(List<Mover> movers) {
    Map<String, Part> parts = new TreeMap<>();
    List.of(cube("a", 0), cube("b", 200), cube("c", 400)).forEach(p -> parts.put(p.id(), p));
    return new Station(
        Briefs.of(Briefs.SAW),
        Optional.empty(),
        parts,
        Map.of(),
        List.of(),
        List.of(),
        movers,
        List.of(),
        Map.of(),
        List.of(),
        List.of());
  }

  private static Vec at(List<Body> bodies, String id) {
    return bodies.stream()
        .filter(b -> b.id().equals(id))
        .findFirst()
        .orElseThrow()
        .placement()
        .origin();
  }

  @Test
  void of_aPlainMover_hasEverythingWhereItRests() {
    Station station = station(List.of(slide("a", Setting.PLAIN)));
    Situation situation = Situation.of(station, station.movers().get(0));
    assertEquals(List.of(station.parts().get("a").body()), situation.moved());
    assertEquals(
        List.of(station.parts().get("b").body(), station.parts().get("c").body()),
        situation.standing());
  }

  @Test
  void of_aSetting_setsMovesAsideAndElsewhere() {
    Part board = cube("board", 900);
    Setting setting =
        new Setting(
            Placement.at(new Vec(0, 0, 30)), List.of("c"), Map.of("b-turns", 90.0), List.of(board));
    Mover turn = new Mover("b-turns", List.of("b"), new Turn(Vec.ZERO, UP, 0, 90, 0), List.of());
    Station station = station(List.of(slide("a", setting), turn));
    Situation situation = Situation.of(station, station.mover("a-slides").orElseThrow());
    assertEquals(new Vec(0, 0, 30), at(situation.moved(), "a"));
    assertEquals(new Vec(900, 0, 0), at(situation.moved(), "board"));
    assertEquals(List.of("b"), situation.standing().stream().map(Body::id).toList());
    assertEquals(new Vec(0, 200, 0), at(situation.standing(), "b"));
  }

  @Test
  void of_anotherMoverOfTheSameBody_setsItAfterThat() {
    // First the other slide by 50 along x, then the quarter turn that sets it: to (0, 50, 0).
    Setting setting =
        Setting.meanwhile(Map.of("a-slides", 50.0))
            .set(Placement.identity().turned(Vec.ZERO, UP, 90));
    Mover lift = new Mover("a-lifts", List.of("a"), new Slide(UP, 0, 10, 0), List.of(), setting);
    Station station = station(List.of(slide("a", Setting.PLAIN), lift));
    assertEquals(new Vec(0, 50, 0), at(Situation.of(station, lift).moved(), "a"));
  }

  @Test
  void station_refusesASettingThatNamesWhatIsNotThere() {
    for (Setting wrong :
        List.of(
            Setting.aside(List.of("d")),
            Setting.aside(List.of("a")),
            Setting.meanwhile(Map.of("d-slides", 1.0)),
            Setting.meanwhile(Map.of("a-slides", 1.0)),
            Setting.guests(List.of(cube("b", 0))))) {
      assertThrows(
          IllegalArgumentException.class,
          () -> station(List.of(slide("a", wrong))),
          wrong::toString);
    }
  }

  @Test
  void mover_thatGoesNowhereOrMovesNothing_isRefused() {
    IllegalArgumentException still =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Mover("m", List.of("a"), new Slide(RIGHT, 3, 3, 0), List.of()));
    assertTrue(still.getMessage().contains("travel is 0"), still.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> new Mover("m", List.of(), new Slide(RIGHT, 0, 3, 0), List.of()));
  }
}
