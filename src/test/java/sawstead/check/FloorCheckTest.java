package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FloorCheckTest {
  private static String panel(String cuts) {
    return """
        extras:
          - id: jig/base
            stock: ply
            outline: [[0,0],[400,0],[400,100],[0,100]]
            cuts: [%s]
            place: {at: [0,0,0]}
        """
        .formatted(cuts);
  }

  private static String groove(double depth, String face) {
    return "{groove: {from: [0,50], to: [400,50], width: 20, depth: %s, face: %s}}"
        .formatted(depth, face);
  }

  @ParameterizedTest
  @CsvSource({"11.9, 0", "12, 0", "12.1, 1", "17, 1"})
  void judge_ofAGroove_mindsBelowSixMillimetres(double depth, int found) {
    Outcome outcome = Sample.ask(new FloorCheck(), panel(groove(depth, "front")));
    assertEquals(found, outcome.findings().size());
  }

  @Test
  void judge_ofGroovesFromBothFaces_countsThemTogether() {
    Outcome outcome =
        Sample.ask(new FloorCheck(), panel(groove(7, "front") + ", " + groove(7, "back")));
    assertEquals(List.of("mind groove-floor", "mind groove-floor"), Sample.rules(outcome));
    assertTrue(outcome.findings().get(0).says().contains("only 4 mm"));
  }

  @Test
  void judge_ofGroovesSideBySide_saysNothing() {
    String beside = "{groove: {from: [0,80], to: [400,80], width: 20, depth: 7, face: back}}";
    assertEquals(
        List.of(),
        Sample.rules(Sample.ask(new FloorCheck(), panel(groove(7, "front") + ", " + beside))));
  }
}
