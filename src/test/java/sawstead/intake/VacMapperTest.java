package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.brief.Vac;

class VacMapperTest {

  @Test
  void vac_leftOutOrNone_isNone() {
    assertTrue(Briefs.read(Briefs.LEAST).vac().isEmpty());
    assertTrue(Briefs.with("vac: none").vac().isEmpty());
  }

  @Test
  void vac_asABox_hasOneSquareTier() {
    Vac vac = Briefs.with("vac: {width: 380, depth: 370, height: 500}").vac().orElseThrow();
    assertEquals(1, vac.tiers().size());
    assertFalse(vac.tiers().get(0).round());
    assertEquals(370, vac.tiers().get(0).depth().nominal());
  }

  @Test
  void vac_asTiers_hasRoundAndSquareOnes() {
    Vac vac =
        Briefs.with(
                "vac: {tiers: [{diameter: 360, height: 330}, {width: 100, depth: 90, height: 80}]}")
            .vac()
            .orElseThrow();
    assertTrue(vac.tiers().get(0).round());
    assertEquals(vac.tiers().get(0).width(), vac.tiers().get(0).depth());
    assertEquals(90, vac.tiers().get(1).depth().nominal());
  }

  @Test
  void hose_followsItsDiameter() {
    Vac vac =
        Briefs.with("vac: {width: 380, depth: 370, height: 500, hose: {diameter: 50}}")
            .vac()
            .orElseThrow();
    assertEquals(150, vac.hose().bend().nominal());
    assertEquals(68, vac.hose().cuff().nominal());
  }

  @Test
  void vac_withoutAnySize_asksForIt() {
    assertEquals(3, Briefs.problems(Briefs.LEAST + "vac: {mass: 9}\n").size());
  }
}
