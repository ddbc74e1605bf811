package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CertaintyCheckTest {
  private static List<Finding> findings(String phrase, String by) {
    return new CertaintyCheck()
        .judge(new Scene(Models.changed("quay-shed", phrase, by)))
        .findings();
  }

  @Test
  void judge_ofADefaultThatWidensAFigure_namesBoth() {
    List<Finding> findings = findings("", "");
    assertEquals(1, findings.size());
    assertEquals(List.of("saw.feet.settling"), findings.get(0).about());
    assertTrue(findings.get(0).says().contains("outfeedDrop"), findings.get(0).says());
    assertTrue(findings.get(0).remedy().contains("saw.feet.settling"));
  }

  @Test
  void judge_ofAMeasuredBrief_saysNothing() {
    assertEquals(List.of(), findings("rise: 15", "rise: 15, settling: 0.3"));
  }

  @Test
  void judge_ofAnUnknownMass_saysThatNoFigureRestsOnIt() {
    List<Finding> findings =
        findings("mass: 19\n", "mass: unknown\n").stream()
            .filter(f -> f.about().contains("saw.mass"))
            .toList();
    assertEquals(1, findings.size());
  }
}
