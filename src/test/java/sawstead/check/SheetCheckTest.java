package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetCheckTest {
  /** The sheet is 2440 x 1220 with its grain along the length, trimmed by 5 mm on every edge. */
  @ParameterizedTest
  @CsvSource({
    "2430, 1210, ''",
    "2431, 1210, stop panel-too-big",
    "2430, 1211, stop panel-too-big",
    "1210, 2430, mind panel-across-grain",
    "1000, 1300, mind panel-across-grain",
  })
  void judge_ofARectangle(double along, double across, String rule) {
    String extras =
        """
        extras:
          - {id: big/one, stock: ply, outline: [[0,0],[%1$s,0],[%1$s,%2$s],[0,%2$s]], place: {at: [0,0,0]}}
        """
            .formatted(along, across);
    String found = String.join(", ", Sample.rules(Sample.ask(new SheetCheck(), extras)));
    assertEquals(rule, found);
  }
}
