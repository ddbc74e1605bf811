package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiftCheckTest {
  /** 1200 mm x 18 mm x 600 kg/m3 are 12.96 kg for each metre across: 23 kg are 1774.7 mm. */
  @ParameterizedTest
  @CsvSource({"1774, ''", "1776, note two-people"})
  void judge_ofAPanel_notesOver23Kilograms(double length, String rule) {
    String extras =
        "extras: [{id: big/one, stock: ply, outline: [[0,0],[%1$s,0],[%1$s,1200],[0,1200]], place: {at: [0,0,0]}}]"
            .formatted(length);
    assertEquals(rule, String.join(", ", Sample.rules(Sample.ask(new LiftCheck(), extras))));
  }
}
