package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClashCheckTest {
  /** A shelf of 400 x 100 x 18 at the floor, and a second one that far above it. */
  private static String pair(double z) {
    return """
        extras:
          - {id: rack/low, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,0,0]}}
          - {id: rack/high, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,0,%s]}}
        """
        .formatted(z);
  }

  @Test
  void judge_panelsThatTouch_saysNothing() {
    assertEquals(List.of(), Sample.rules(Sample.ask(new ClashCheck(), pair(18))));
  }

  @Test
  void judge_panelsWithinTheTolerance_saysNothing() {
    assertEquals(List.of(), Sample.rules(Sample.ask(new ClashCheck(), pair(17.96))));
  }

  @Test
  void judge_panelsDeeperThanTheTolerance_stops() {
    Outcome outcome = Sample.ask(new ClashCheck(), pair(17.9));
    assertEquals(List.of("stop clash"), Sample.rules(outcome));
    assertEquals(List.of("rack/high", "rack/low"), outcome.findings().get(0).about());
    assertEquals("rack/high and rack/low overlap by 0.1 mm", outcome.findings().get(0).says());
  }

  @Test
  void clashes_ofTwoPanels_haveTheVolumeOfTheirBox() {
    Clash clash = new Scene(Sample.station(pair(8))).clashes().get(0);
    // Two boxes of 400 x 100 share 10 mm of height.
    assertEquals(400 * 100 * 10, clash.volume(), 1e-6);
    assertEquals(10, clash.depth(), 1e-9);
    assertEquals(13, clash.at().z(), 1e-9);
  }
}
