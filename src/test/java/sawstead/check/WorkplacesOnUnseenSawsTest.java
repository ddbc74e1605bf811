package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything at once round a saw that nobody made: none of the units is in another's way. */
class WorkplacesOnUnseenSawsTest {

  private static final String UNITS =
      """
      sleds: [{id: cross}, {id: small, kind: small-parts}]
      inserts: [{id: zero}]
      paddle: {}
      routerTable: {side: right}
      drawers: [{id: bits, in: wing-left}, {id: papers}]
      storage: {side: right}
      """;

  private static Report report(long seed, String more) {
    Random random = new Random(seed);
    String text =
        RandomSaw.of(seed)
                .replaceAll("(?<start>name: main.*thickness: )[0-9.]+", "${start}17.80")
                .replace(
                    "  fence:",
                    String.format(
                        Locale.ROOT,
                        "  switch: {x: -%.1f, below: %.1f}%n  wheel: {side: right, at: 220}%n  fence:",
                        110 + 30 * random.nextDouble(),
                        145 + 30 * random.nextDouble()))
            + "vac: {width: 360, depth: 350, height: 340, hose: {cuff: 45}}\n"
            + "casters: {height: 70, rating: 300 kg}\n"
            + "station: {workingHeight: 960, stand: {vacSide: "
            + (random.nextBoolean() ? "left" : "front")
            + "}}\n"
            + more;
    return UnseenSaws.report(seed, text);
  }

  @ParameterizedTest
  @ValueSource(longs = {101, 102, 103, 104, 105, 106})
  void units_togetherRoundAnUnseenSaw_leaveEachOtherRoom(long seed) {
    Report with = report(seed, UNITS);
    assertEquals(UnseenSaws.stops(report(seed, "")), UnseenSaws.stops(with), "seed " + seed);
    assertEquals(List.of(), with.clashes(), "seed " + seed);
    assertTrue(
        Stream.of("paddle/board", "router/motor", "bits/front", "papers/front", "storage/outer")
            .allMatch(with.station().parts()::containsKey),
        "seed " + seed);
  }
}
