package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.station.Station;

/** Distances by Pythagoras between what the station shows. */
class HoseCheckTest {
  private static Station station(String hose) {
    return Models.changed(
        "quay-shed",
        "hose: {diameter: 35, bend: 100, cuff: 44}",
        "hose: {diameter: 35, bend: 100, cuff: 44" + hose + "}");
  }

  @Test
  void judge_ofAHoseAMillimetreTooShort_flips() {
    Station station = station("");
    Box port = station.part("saw/dust-port").orElseThrow().body().box();
    Box hose = station.part("vac/hose").orElseThrow().body().box();
    Box vac = station.part("vac/body").orElseThrow().body().box();
    double x = hose.centre().x();
    double y = hose.centre().y();
    // the port's mouth is at its rear, in its middle
    double above =
        Math.hypot(
            Math.hypot(port.centre().x() - x, port.high().y() - y),
            port.centre().z() - hose.high().z());
    double far = Math.max(Math.abs(vac.low().x() - x), Math.abs(vac.high().x() - x));
    double deep = Math.max(Math.abs(vac.low().y() - y), Math.abs(vac.high().y() - y));
    double below = Math.hypot(Math.hypot(far, deep), hose.low().z() - vac.high().z());
    double needs = above + below + hose.size().z() + 2 * 100;
    for (double more : new double[] {-0.01, 0.01}) {
      Outcome outcome =
          new HoseCheck().judge(new Scene(station(", length: %.4f ± 0".formatted(needs + more))));
      assertEquals(more < 0 ? "hose-short" : "", String.join(",", rules(outcome)));
      assertEquals(more, outcome.margins().get(0).spare(), 1e-3);
    }
  }

  private static java.util.List<String> rules(Outcome outcome) {
    return outcome.findings().stream().map(Finding::rule).toList();
  }
}
