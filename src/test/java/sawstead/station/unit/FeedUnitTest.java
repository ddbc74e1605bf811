package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.station.Briefs;
import sawstead.station.DesignException;
import sawstead.station.Mover;
import sawstead.station.Station;

class FeedUnitTest {
  private static final String BASE = Briefs.SAW + "station:\n  workingHeight: 900\n" + Briefs.BARE;

  private static Station station(String more) {
    return Units.station(Briefs.of(BASE + more));
  }

  /**
   * The fence's face is half a kerf and what is kept from the blade, and so is the board's edge.
   */
  @Test
  void rip_setsTheFenceAndTheBoardAgainstIt() {
    Station station =
        station("feeds: [{id: shelf, cut: rip, length: 1200, width: 300, keep: 100}]\n");
    Mover feed = station.mover("feed/shelf").orElseThrow();
    double half = station.brief().saw().orElseThrow().blade().kerf().nominal() / 2;
    assertEquals(100 + half, feed.setting().others().get("saw/fence-travels"), 1e-9);
    Box board = feed.setting().guests().get(0).body().box();
    assertEquals(100 + half, board.high().x(), 1e-9);
    assertEquals(900, board.low().z(), 1e-9);
    // The trailing edge ends as far behind the arbor as the leading edge begins before it.
    double arbor = 230;
    assertEquals(arbor - board.high().y(), board.low().y() + feed.motion().to() - arbor, 1e-9);
  }

  /** A riving knife stands in the cut, which is wider than it is. */
  @Test
  void knife_isNotInTheWayOfABoard() {
    String saw = Briefs.SAW.replaceFirst("(?m)^  slots:", "  knife: {thickness: 2.3}\n  slots:");
    Station station =
        Units.station(Briefs.of(saw + "station:\n  workingHeight: 900\n" + Briefs.BARE));
    assertTrue(station.parts().containsKey("saw/knife"));
    station.movers().stream()
        .filter(m -> m.id().startsWith("feed/"))
        .forEach(m -> assertTrue(m.setting().aside().contains("saw/knife"), m.id()));
  }

  @Test
  void rip_beyondTheFencesTravel_isRefused() {
    DesignException refusal =
        assertThrows(
            DesignException.class,
            () -> station("feeds: [{id: shelf, cut: rip, length: 1200, width: 900, keep: 400}]\n"));
    assertTrue(refusal.getMessage().contains("the fence goes to"), refusal.getMessage());
  }

  @Test
  void feeds_leftOut_areThreeAndNoneWhenNoneIsWished() {
    assertEquals(3, count(station("")));
    assertEquals(0, count(station("feeds: []\n")));
  }

  private static long count(Station station) {
    return station.movers().stream().filter(m -> m.id().startsWith("feed/")).count();
  }
}
