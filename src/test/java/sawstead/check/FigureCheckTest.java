package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureCheckTest {
  private static List<String> rules(String phrase, String by) {
    return Sample.rules(
        new FigureCheck().judge(new Scene(Models.changed("quay-shed", phrase, by))));
  }

  @Test
  void judge_ofAVacWithRoom_saysNothing() {
    assertEquals(List.of(), rules("", ""));
  }

  /** Legs of 554.6 mm and a vac of 330 + 120 mm leave 104.6 mm above it. */
  @ParameterizedTest
  @CsvSource({"104, ''", "105, mind vac-lid-room"})
  void judge_ofTheLidRoom_mindsWhenItIsMoreThanThereIs(double room, String rule) {
    assertEquals(rule, String.join(", ", rules("lidRoom: 60", "lidRoom: " + room)));
  }

  /**
   * The upper stretcher is 90 mm high: 14.6 mm are left of the doorway; beyond it, the search for a
   * way out speaks.
   */
  @ParameterizedTest
  @CsvSource({"130, ''", "134.3, mind vac-doorway", "136, ''"})
  void judge_ofTheDoorway_mindsWithinItsBand(double height, String rule) {
    List<String> found =
        rules("{diameter: 300, height: 120}", "{diameter: 300, height: " + height + "}").stream()
            .filter(r -> !r.endsWith("vac-lid-room"))
            .toList();
    assertEquals(rule, String.join(", ", found));
  }

  @Test
  void judge_ofAReliefGroove_tellsItsMarginAtTheWorst() {
    Outcome outcome = new FigureCheck().judge(new Scene(Models.station("quay-shed")));
    Margin margin =
        outcome.margins().stream().filter(m -> m.name().equals("reliefFloor-1")).findFirst().get();
    assertTrue(margin.spare() > 0 && margin.spare() < 3, margin.toString());
  }
}
