package sawstead.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.brief.Brief;

class LevelsTest {

  /**
   * 1 in casters + base + 18-1/2 in leg + top + 13-3/4 in saw, with three sheets (common practice,
   * no source; the sums are worked by hand, an inch is exactly 25.4 mm by REF-NUM-01).
   */
  @ParameterizedTest
  @CsvSource({"3/4 in, 882.65", "23/32 in, 881.0625", "18 mm, 880.55"})
  void solve_addsUpTheHeightChain(String sheet, double workingHeight) {
    Levels levels = levels(chain(sheet, "legs: {length: 18-1/2}"));
    assertEquals(workingHeight, levels.table(), 1e-9);
    assertEquals(18.5 * 25.4, levels.leg(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"3/4 in, 882.65", "23/32 in, 881.0625", "18 mm, 880.55"})
  void solve_findsTheLegOfAWorkingHeight(String sheet, double workingHeight) {
    Levels levels = levels(chain(sheet, "workingHeight: " + workingHeight + " mm"));
    assertEquals(18.5 * 25.4, levels.leg(), 1e-9);
  }

  @Test
  void solve_withoutAHeight_leavesTheVacItsRoom() {
    Levels levels =
        levels(Briefs.SAW + "vac: {width: 300, depth: 300, height: 620}\nstation:\n" + Briefs.BARE);
    double lidRoom = 150;
    assertTrue(levels.leg() >= 620 + lidRoom, "leg " + levels.leg());
  }

  @Test
  void solve_refusesAHeightThatLeavesNoLeg() {
    DesignException e =
        assertThrows(DesignException.class, () -> levels(chain("18 mm", "workingHeight: 500 mm")));
    assertEquals("station.workingHeight", e.path());
    assertTrue(e.getMessage().contains("legs would be"), e.getMessage());
    assertTrue(e.remedy().contains("at least"), e.remedy());
  }

  @Test
  void lowestTable_isTheLowestCornerLessSettling() {
    String text =
        Briefs.SAW
                .replace("height: 330}", "height: 330, heights: {rearLeft: 328.5}}")
                .replace("settling: 0", "settling: 0.5")
            + "station:\n  legs: {length: 500}\n"
            + Briefs.BARE;
    Levels levels = levels(text);
    assertEquals(18 + 500 + 18 + 328.5 - 0.5, levels.lowestTable(), 1e-9);
    assertEquals(18 + 500 + 18 + 330, levels.table(), 1e-9);
  }

  private static Levels levels(String text) {
    Brief brief = Briefs.of(text);
    return Levels.solve(brief, brief.saw().orElseThrow(), brief.station().orElseThrow());
  }

  private static String chain(String sheet, String height) {
    return """
        name: chain
        units: inch
        saw:
          table: {width: 26, depth: 22, height: 13-3/4}
          feet: {left: 10, right: 13, front: 2, rear: 20}
          bottom: closed
          blade: {leftEdge: 11, arbor: 11}
          slots: [{at: -5-1/2, width: 3/4, depth: 3/8}]
          fence: {kind: sliding, right: 24}
        stock:
          - {name: ply, length: 96, width: 48, thickness: %s}
        casters: {height: 1}
        station:
          %s
          wings: {left: none, right: none}
          outfeed: none
        """
        .formatted(sheet, height);
  }
}
