package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProudCheckTest {
  private static Outcome judge(String phrase, String by) {
    return new ProudCheck().judge(new Scene(Models.changed("quay-shed", phrase, by)));
  }

  @Test
  void judge_ofADropThatCoversItsBand_saysNothing() {
    assertEquals(List.of(), Sample.rules(judge("", "")));
  }

  @Test
  void judge_ofADropThatDoesNotCoverItsBand_minds() {
    Outcome outcome = judge("drop: 1.5", "drop: 0.8");
    assertEquals(List.of("mind proud-in-band"), Sample.rules(outcome));
    assertTrue(outcome.findings().get(0).says().contains("outfeed"));
  }

  /** The lowest corner is 299.5 mm high and settles by 0.5: 889 mm over the floor. */
  @ParameterizedTest
  @CsvSource({"871.2, ''", "871.4, stop proud", "900, stop proud"})
  void judge_ofABlockOnTheWing_stopsAboveTheLowestCorner(double z, String rule) {
    String block =
        """
        extras:
          - {id: wing-right/block, stock: birch-18, outline: [[0,0],[50,0],[50,50],[0,50]], place: {at: [400, 100, %s]}}
        stock:
        """
            .formatted(z);
    assertEquals(rule, String.join(", ", Sample.rules(judge("stock:\n", block))));
  }
}
