package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.solid.Box;
import sawstead.station.Station;

/** Only the brief changes: another saw, another router, the wing on either side. */
class RoutersOnUnseenSawsTest {

  private static Report report(long seed, boolean router) {
    Random random = new Random(seed);
    String side = random.nextBoolean() ? "left" : "right";
    String text =
        RandomSaw.of(seed)
            + "vac: {width: 360, depth: 350, height: 340, hose: {cuff: 45}}\n"
            + "casters: {height: 70, rating: 150 kg}\n"
            + "station: {workingHeight: 960, wings: {left: {width: 410}, right: {width: 410}}}\n";
    String more =
        String.format(
            Locale.ROOT,
            "routerTable: {side: %s, router: {base: %.1f, motor: %.1f, motorLength: %.1f, lift: %.1f},"
                + " bit: %.1f, above: %.1f}%n",
            side,
            130 + 40 * random.nextDouble(),
            70 + 35 * random.nextDouble(),
            180 + 120 * random.nextDouble(),
            50 + 20 * random.nextDouble(),
            12 + 35 * random.nextDouble(),
            15 + 30 * random.nextDouble());
    String whole = router ? text + more : text;
    return UnseenSaws.report(seed, whole);
  }

  @ParameterizedTest
  @ValueSource(longs = {51, 52, 53, 54, 55, 56, 57, 58})
  void router_inAWingOfAnUnseenSaw_isClearAtAllHeights(long seed) {
    Report with = report(seed, true);
    assertEquals(UnseenSaws.stops(report(seed, false)), UnseenSaws.stops(with), "seed " + seed);
    assertEquals(List.of(), with.clashes(), "seed " + seed);
    Station station = with.station();
    Box plate = station.part("router/plate").orElseThrow().body().box();
    String wing = station.brief().routerTable().orElseThrow().side().word();
    Box top = station.part("wing-" + wing + "/top").orElseThrow().body().box();
    assertEquals(top.high().z(), plate.high().z(), 2e-6, "seed " + seed);
    assertTrue(
        with.passages().stream()
            .filter(p -> p.mover().id().startsWith("router/"))
            .allMatch(p -> p.firstContact().isEmpty()),
        "seed " + seed);
  }
}
