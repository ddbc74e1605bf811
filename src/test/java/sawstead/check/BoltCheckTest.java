package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BoltCheckTest {
  private static final String UNDER_BOLT =
      """
      extras:
        - {id: block/under, stock: birch-18, outline: [[0,0],[60,0],[60,60],[0,60]], place: {at: [%s, 20, %s]}}
      """;

  private static List<String> rules(double x, double z) {
    String brief = "stock:\n";
    return Sample.rules(
        new BoltCheck()
            .judge(
                new Scene(
                    Models.changed(
                        "quay-shed", brief, UNDER_BOLT.formatted(x, z) + "\n" + brief))));
  }

  /** A bolt of the saw is at x -215, y 50; the top's underside is at 572.3 mm. */
  @Test
  void judge_ofABlockUnderABolt_stops() {
    assertEquals(List.of("stop bolt-blocked"), rules(-240, 530));
  }

  @Test
  void judge_ofABlockBesideOrFarBelow_saysNothing() {
    assertEquals(List.of(), rules(-195, 530));
    assertEquals(List.of(), rules(-240, 572.3 - 18 - 31));
  }
}
