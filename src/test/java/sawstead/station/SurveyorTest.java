package sawstead.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.station.unit.Units;

class SurveyorTest {
  private static Station stand(String thickness, String fit) {
    String wish =
        "  stand: {legs: {width: 60}, stretchers: {fit: %s}}\n  workingHeight: 900\n"
            .formatted(fit);
    String saw = Briefs.SAW.replace("thickness: 18", "thickness: " + thickness);
    return Units.station(Briefs.of(saw + "station:\n" + wish + Briefs.BARE));
  }

  @Test
  void legsTooNarrowForALappedStretcher_areTold_withTheLeastThatWillDo() {
    DesignException told = assertThrows(DesignException.class, () -> stand("32", "lapped"));
    assertEquals("station.stand.legs.width", told.path());
    assertTrue(told.remedy().contains("at least 66 mm"), told.remedy());
  }

  @Test
  void legsWideEnough_orStretchersBetweenThem_areFine() {
    assertTrue(stand("28", "lapped").parts().size() > 8);
    assertTrue(stand("32", "between").parts().size() > 8);
  }
}
