package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two shelves of 18 mm on each other; a screw from the top of the upper one into the lower one. */
class ScrewHoldCheckTest {
  private static String pair(String screw, String lowCuts, String highCuts) {
    return """
        extras:
          - id: rack/low
            stock: ply
            outline: [[0,0],[400,0],[400,100],[0,100]]
            cuts: [%s]
            place: {at: [0,0,0]}
          - id: rack/high
            stock: ply
            outline: [[0,0],[400,0],[400,100],[0,100]]
            cuts: [%s]
            place: {at: [0,0,18]}
            screws: [%s]
        """
        .formatted(lowCuts, highCuts, screw);
  }

  private static String screw(double u, double v, int gauge, double length) {
    return "{at: [%s,%s], face: front, gauge: %s, length: %s, into: rack/low}"
        .formatted(u, v, gauge, length);
  }

  private static List<String> rules(String screw, String lowCuts, String highCuts) {
    return Sample.rules(Sample.ask(new ScrewHoldCheck(), pair(screw, lowCuts, highCuts)));
  }

  @Test
  void judge_ofAScrewThatFits_saysNothing() {
    assertEquals(List.of(), rules(screw(200, 50, 8, 32), "", ""));
  }

  /** Both shelves together are 36 mm thick. */
  @ParameterizedTest
  @CsvSource({"35.9, ''", "36.2, stop screw-breakthrough", "45, stop screw-breakthrough"})
  void judge_ofALongScrew_stopsWhenItsTipStandsOut(double length, String rule) {
    assertEquals(rule, String.join(", ", rules(screw(200, 50, 8, length), "", "")));
  }

  @Test
  void judge_ofALongScrew_saysByHowMuch() {
    Outcome outcome = Sample.ask(new ScrewHoldCheck(), pair(screw(200, 50, 8, 45), "", ""));
    assertTrue(outcome.findings().get(0).says().endsWith("would stand out by 9 mm"));
    assertEquals(
        List.of("rack/high", "rack/low", "rack/high/screw-1"), outcome.findings().get(0).about());
  }

  /** A #8 shank is 4.17 mm (REF-FAS-11); it holds nothing below two diameters, 8.3 mm. */
  @ParameterizedTest
  @CsvSource({"26.2, stop screw-short", "26.5, ''"})
  void judge_ofAShortScrew_stopsWhenItHoldsNothing(double length, String rule) {
    assertEquals(rule, String.join(", ", rules(screw(200, 50, 8, length), "", "")));
  }

  /** Slide a groove across a known screw, and a stop appears. */
  @ParameterizedTest
  @CsvSource({"60, ''", "80, ''", "86.5, stop", "95, stop", "100, stop", "113, stop", "114.5, ''"})
  void judge_ofAGrooveThatSlidesAcrossAScrew(double x, String severity) {
    String groove =
        "{groove: {from: [%1$s,0], to: [%1$s,100], width: 20, depth: 9, face: front}}".formatted(x);
    List<String> found = rules(screw(100, 50, 8, 32), groove, "");
    assertEquals(severity.isEmpty() ? List.of() : List.of("stop screw-meets-groove"), found);
  }

  @Test
  void judge_ofAPortAcrossAScrew_stops() {
    String port = "{circle: {at: [205,50], diameter: 40}}";
    assertEquals(List.of("stop screw-meets-port"), rules(screw(200, 50, 8, 32), "", port));
  }

  @ParameterizedTest
  @CsvSource({"4.2, ''", "3.9, stop screw-edge", "2.2, stop screw-edge"})
  void judge_nearAnEdge_stopsWhenTooLittleWoodIsBesideIt(double v, String rule) {
    List<String> found = rules(screw(200, v, 8, 32), "", "");
    assertEquals(rule, String.join(", ", found.stream().distinct().toList()));
  }

  @Test
  void judge_ofManyScrewsInOneJoint_isOneFinding() {
    String screws =
        screw(50, 50, 8, 45) + ", " + screw(150, 50, 8, 44) + ", " + screw(250, 50, 8, 43);
    Outcome outcome = Sample.ask(new ScrewHoldCheck(), pair(screws, "", ""));
    assertEquals(List.of("stop screw-breakthrough"), Sample.rules(outcome));
    assertEquals(
        "3 screws through rack/high into rack/low would stand out by 9 mm",
        outcome.findings().get(0).says());
  }

  @Test
  void judge_ofAScrewThatFits_tellsTheMarginOfItsTip() {
    Outcome outcome = Sample.ask(new ScrewHoldCheck(), pair(screw(200, 50, 8, 32), "", ""));
    assertEquals(4, outcome.margins().get(0).spare(), 1e-3);
  }
}
