package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class StabilityCheckTest {
  private static Outcome judge(String phrase, String by) {
    return new StabilityCheck().judge(new Scene(Models.changed("first-brief", phrase, by)));
  }

  private static Margin margin(Outcome outcome, String name) {
    return outcome.margins().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void judge_ofCastersThatAreTooWeak_stops() {
    // REF-STB-04: nearly half the mass on one of them.
    Outcome outcome = judge("casters: {height: 70}", "casters: {height: 70, rating: 20}");
    assertTrue(Sample.rules(outcome).contains("stop wheel-overload"));
    assertEquals(20, margin(outcome, "wheel-load").has(), 1e-9);
  }

  @Test
  void judge_ofTheSameStationOnTheFloor_looksAtNoWheels() {
    Outcome outcome = judge("casters: {height: 70}", "casters: none");
    assertTrue(outcome.margins().stream().noneMatch(m -> m.name().equals("wheel-load")));
  }

  @Test
  void judge_ofAHeavierSaw_needsAHarderPush() {
    // REF-STB-01: with the same lever, the force grows with the weight.
    double light = margin(judge("", ""), "tipping-force").has();
    double heavy =
        margin(judge("bottom: closed", "bottom: closed\n  mass: 60"), "tipping-force").has();
    assertTrue(heavy > light + 50, light + " N, then " + heavy + " N");
  }

  @Test
  void judge_ofAMassBehindTheStand_tips() {
    Outcome outcome =
        judge(
            "bottom: closed", "bottom: closed\n  mass: 200\n  centre: {x: 0, y: 1500, below: 150}");
    assertEquals(List.of("stop tips"), Sample.rules(outcome));
    assertTrue(margin(outcome, "static-margin").spare() < 0);
  }

  @Test
  void judge_ofAPanelBesideTheSaw_leavesTheStationAsItWas() {
    double alone = margin(judge("", ""), "tipping-force").has();
    assertEquals(alone, margin(judge("units: mm", panelAt(1500, 0)), "tipping-force").has(), 1e-9);
    // On the outfeed it counts: 0.4 x 0.3 x 0.018 m3 of 600 kg/m3 weigh more than 1 kg.
    double inside = margin(judge("units: mm", panelAt(-200, 900)), "tipping-force").has();
    assertTrue(inside > alone + 1, alone + " N, then " + inside + " N");
  }

  private static String panelAt(int x, int z) {
    return """
        units: mm
        extras:
          - id: spare
            stock: birch-18
            outline: [[0, 0], [400, 0], [400, 300], [0, 300]]
            place: {at: [%d, 100, %d]}
        """
        .formatted(x, z);
  }
}
