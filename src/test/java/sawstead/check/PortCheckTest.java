package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PortCheckTest {
  /** The plug of the quay shed's saw is 40 ± 5 mm at most by the default band of a plug. */
  @ParameterizedTest
  @CsvSource({"30, stop port-narrow", "50, ''"})
  void judge_ofAPortForThePlug_stopsWhenItIsNarrower(double diameter, String rule) {
    assertEquals(rule, rules(diameter, 0, 300));
  }

  /** The rear stretcher lies right behind the panel's lower end. */
  @ParameterizedTest
  @CsvSource({"0, 300, ''", "0, 60, stop port-blocked", "0, 120, stop port-blocked"})
  void judge_ofAPortBeforeAStretcher_stops(double x, double z, String rule) {
    assertEquals(rule, rules(50, x, z));
  }

  private static String rules(double diameter, double x, double z) {
    String wish = "stand:\n    sides: {front: stretchers, rear: stretchers,";
    String port =
        "ports: [{id: out, through: [stand/panel-rear], at: [%s, 0, %s], use: plug, diameter: %s}]\n  "
            .formatted(x, z, diameter);
    String by = port + "stand:\n    sides: {front: stretchers, rear: panel,";
    return String.join(
        ", ",
        Sample.rules(new PortCheck().judge(new Scene(Models.changed("quay-shed", wish, by)))));
  }
}
