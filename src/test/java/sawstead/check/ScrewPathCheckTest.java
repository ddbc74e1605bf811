package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScrewPathCheckTest {
  private static String rack(String screws, String more) {
    return """
        extras:
          - {id: rack/low, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,0,0]}}
          - id: rack/high
            stock: ply
            outline: [[0,0],[400,0],[400,100],[0,100]]
            place: {at: [0,0,18]}
            screws: [%s]
        %s
        """
        .formatted(screws, more);
  }

  private static final String THROUGH =
      "{at: [200,50], face: front, gauge: 8, length: 45, into: rack/low}";

  @Test
  void judge_ofAScrewInItsOwnParts_saysNothing() {
    assertEquals(List.of(), Sample.rules(Sample.ask(new ScrewPathCheck(), rack(THROUGH, ""))));
  }

  @Test
  void judge_ofAScrewThatEndsInAThirdPanel_stops() {
    String third =
        "  - {id: rack/under, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at:"
            + " [0,0,-18]}}";
    Outcome outcome = Sample.ask(new ScrewPathCheck(), rack(THROUGH, third));
    assertEquals(List.of("stop screw-meets-body"), Sample.rules(outcome));
    assertEquals(List.of("rack/under", "rack/high/screw-1"), outcome.findings().get(0).about());
  }

  @Test
  void judge_ofTwoScrewsOnOneLine_stops() {
    String near = "{at: [203,50], face: front, gauge: 8, length: 32, into: rack/low}";
    String far = "{at: [206,50], face: front, gauge: 8, length: 32, into: rack/low}";
    assertEquals(
        List.of("stop screw-meets-screw"),
        Sample.rules(Sample.ask(new ScrewPathCheck(), rack(THROUGH + ", " + near, ""))));
    assertEquals(
        List.of(), Sample.rules(Sample.ask(new ScrewPathCheck(), rack(THROUGH + ", " + far, ""))));
  }
}
