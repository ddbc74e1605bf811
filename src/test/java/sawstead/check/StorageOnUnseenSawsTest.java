package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Only the brief changes: another saw, other blades, gauge and sticks, on either side or alone. */
class StorageOnUnseenSawsTest {

  private static Report report(long seed, boolean station, boolean rack) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(RandomSaw.of(seed));
    if (station) {
      // No wing is held by sheets thinner than that, nor is a rack.
      String made =
          text.toString().replaceAll("(?<start>name: main.*thickness: )[0-9.]+", "${start}17.80");
      text = new StringBuilder(made);
      text.append(
          "vac: {width: 360, depth: 350, height: 340, hose: {cuff: 45}}\n"
              + "casters: {height: 70, rating: 200 kg}\nstation: {workingHeight: 960}\n");
    }
    if (rack) {
      text.append(
          String.format(
              Locale.ROOT,
              "storage: {gauge: {width: %.1f, length: %.1f, height: %.1f}, pushSticks: {count: %d},"
                  + " blades: %b}%n",
              110 + 60 * random.nextDouble(),
              320 + 150 * random.nextDouble(),
              40 + 40 * random.nextDouble(),
              random.nextInt(4),
              random.nextBoolean()));
    }
    return UnseenSaws.report(seed, text.toString());
  }

  @ParameterizedTest
  @ValueSource(longs = {81, 82, 83, 84, 85, 86, 87, 88})
  void rack_alone_isClear(long seed) {
    Report report = report(seed, false, true);
    assertEquals(List.of(), UnseenSaws.stops(report), "seed " + seed);
    assertEquals(List.of(), report.clashes(), "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {91, 92, 93, 94, 95})
  void rack_atTheStandOfAnUnseenSaw_isClear(long seed) {
    Report with = report(seed, true, true);
    assertEquals(
        UnseenSaws.stops(report(seed, true, false)), UnseenSaws.stops(with), "seed " + seed);
    assertEquals(List.of(), with.clashes(), "seed " + seed);
  }
}
