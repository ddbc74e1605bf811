package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.station.DesignException;

/** Only the brief changes: another saw, drawers in wings that open to any side, or in a case. */
class DrawersOnUnseenSawsTest {

  private static Report report(long seed, boolean station, String more) {
    Random random = new Random(seed);
    String left = random.nextBoolean() ? "left" : "front";
    String right = random.nextBoolean() ? "right" : "front";
    String text =
        RandomSaw.of(seed)
            + (station
                ? "vac: {width: 360, depth: 350, height: 340, hose: {cuff: 45}}\n"
                    + "casters: {height: 70, rating: 200 kg}\nstation: {workingHeight: 960, wings: {left: {opening: "
                    + left
                    + "}, right: {opening: "
                    + right
                    + "}}}\n"
                : "")
            + more;
    return UnseenSaws.report(seed, text);
  }

  @ParameterizedTest
  @ValueSource(longs = {61, 62, 63, 64, 65, 66})
  void drawers_inTheWingsOfAnUnseenSaw_runOutClear(long seed) {
    String drawers =
        "drawers:\n  - {id: one, in: wing-left}\n"
            + "  - {id: two, in: wing-right, contents: [{id: tin, width: 60, depth: 50, height: 30}]}\n"
            + "  - {id: three, in: wing-right}\n";
    Report with = report(seed, true, drawers);
    assertEquals(UnseenSaws.stops(report(seed, true, "")), UnseenSaws.stops(with), "seed " + seed);
    assertEquals(List.of(), with.clashes(), "seed " + seed);
    assertTrue(
        with.passages().stream()
            .filter(p -> p.mover().id().endsWith("/opens"))
            .filter(p -> p.mover().id().matches("(one|two|three)/.*"))
            .allMatch(p -> p.firstContact().isEmpty()),
        "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {71, 72, 73, 74, 75, 76})
  void drawers_alone_areClear(long seed) {
    Report report = report(seed, false, "drawers:\n  - {id: one}\n  - {id: two, slide: 10}\n");
    assertEquals(List.of(), UnseenSaws.stops(report), "seed " + seed);
    assertEquals(List.of(), report.clashes(), "seed " + seed);
  }

  /** Wing and drawer both say what is kept in one cubby: a question to the user, no clash. */
  @Test
  void drawer_inAWingThatKeepsSomethingElse_isRefusedInWords() {
    String text =
        RandomSaw.of(61)
            + "vac: none\ncasters: none\nstation: {workingHeight: 960, wings: {left: {contents:"
            + " [{id: tin, width: 90, depth: 70, height: 40}]}}}\ndrawers: [{id: one, in: ";
    DesignException refused =
        assertThrows(DesignException.class, () -> SledBriefs.station(text + "wing-left}]\n"));
    assertTrue(refused.getMessage().contains("tin"), refused.getMessage());
    assertEquals("drawers[0].in", refused.path());
    assertTrue(SledBriefs.station(text + "case}]\n").part("one/front").isPresent());
  }
}
