package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.brief.SwitchSpot;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.station.Station;

/** Only the brief changes: switch on the left or the right, its stop on any half, small saws. */
class PaddlesOnUnseenSawsTest {

  private static Report report(long seed, String more) {
    Random random = new Random(seed);
    String side = random.nextBoolean() ? "left" : "right";
    String line =
        String.format(
            Locale.ROOT,
            "  switch: {x: %s%.1f, below: %.1f, out: %.1f, stop: %s, stopOut: %.1f, stroke: %.1f}%n"
                + "  wheel: {side: %s}%n  fence:",
            side.equals("left") ? "-" : "",
            110 + 40 * random.nextDouble(),
            140 + 60 * random.nextDouble(),
            10 + 25 * random.nextDouble(),
            List.of("below", "above", "left", "right").get(random.nextInt(4)),
            5.5 + 8 * random.nextDouble(),
            2 + 2 * random.nextDouble(),
            side.equals("left") ? "right" : "left");
    String text = RandomSaw.of(seed).replace("  fence:", line) + more;
    return UnseenSaws.report(seed, text);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void paddle_ofAnUnseenSaw_isClearAndPressesTheStop(long seed) {
    Report report = report(seed, "paddle: {}\n");
    assertEquals(List.of(), UnseenSaws.stops(report), "seed " + seed);
    assertEquals(List.of(), report.clashes(), "seed " + seed);
    Station station = report.station();
    assertTrue(
        station.parts().keySet().stream().allMatch(id -> id.matches("(saw|paddle)/.*")),
        station.parts().keySet().toString());
    SwitchSpot spot = station.brief().saw().orElseThrow().switchSpot();
    Turn turn = (Turn) station.mover("paddle/presses").orElseThrow().motion();
    Box press = station.part("paddle/press").orElseThrow().body().box();
    double d = press.high().y() - turn.at().y();
    double h = turn.at().z() - press.low().z();
    double a = Math.toRadians(turn.to());
    double front = station.brief().saw().orElseThrow().body().front().nominal();
    double stop = front - spot.out().nominal() - spot.stopOut().nominal();
    double reached = turn.at().y() + d * Math.cos(a) + h * Math.sin(a);
    assertEquals(stop + spot.stroke().nominal() + 1, reached, 1e-4, "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44})
  void paddle_onAStation_isReachedByAKneeAndInNobodysWay(long seed) {
    String station =
        "vac: {width: 380, depth: 370, height: 360, hose: {cuff: 45}}\ncasters: {height: 70}\n"
            + "station: {workingHeight: 960"
            + (seed % 2 == 0 ? ", stand: {vacSide: left}" : "")
            + "}\n";
    Report with = report(seed, station + "paddle: {}\n");
    assertEquals(UnseenSaws.stops(report(seed, station)), UnseenSaws.stops(with), "seed " + seed);
    assertTrue(
        with.margins().stream().anyMatch(m -> m.name().equals("paddle-knee")), "seed " + seed);
  }
}
