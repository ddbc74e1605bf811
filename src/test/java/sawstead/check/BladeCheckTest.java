package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BladeCheckTest {

  private static List<String> ask(String blades, String knife) {
    String saw = SledBriefs.SAW.replace("{thickness: 2.3, belowCrown: 3}", knife);
    return SledBriefs.grave(
        SledBriefs.ask(new BladeCheck(), saw + blades + SledBriefs.ALIGNED + SledBriefs.SLED));
  }

  @Test
  void blade_ofTheSaw_isFine() {
    assertEquals(List.of(), ask("", "{thickness: 2.3, belowCrown: 3}"));
  }

  @Test
  void knife_betweenPlateAndKerf_isJudgedForEachBlade() {
    String blades =
        "blades:\n  - {id: one, plate: 1.8, kerf: 2.8}\n  - {id: two, plate: 1.4, kerf: 2.2}\n"
            + "  - {id: three, plate: 2.4, kerf: 3.2}\n";
    assertEquals(
        List.of("mind knife-thin", "stop knife-wide"),
        ask(blades, "{thickness: 2.3, belowCrown: 3}"));
  }

  @Test
  void splitter_aboveTheCrown_comesOffForTheSled() {
    assertEquals(
        List.of("mind knife-off"), ask("", "{kind: splitter, thickness: 2.3, belowCrown: -30}"));
  }

  @Test
  void blade_largerThanTheSawCarries_isRefused() {
    assertEquals(
        List.of("stop blade-too-big"), ask("blades: [{id: big, diameter: 300}]\n", "none"));
  }
}
