package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.brief.HandWheel;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Box;
import sawstead.station.DesignException;
import sawstead.station.Part;
import sawstead.station.unit.Units;

/**
 * A hand-wheel on the saw's front beside the switch, anywhere, tilted to either side: the paddle
 * keeps clear of all its swing, or the user is told in words why it cannot.
 */
class PaddlesBesideWheelsTest {
  private static final String STATION =
      """
      vac: {width: 380, depth: 370, height: 360, hose: {cuff: 45}}
      casters: {height: 70}
      station: {workingHeight: 960}
      """;

  private static String text(long seed, boolean station) {
    Random random = new Random(104729 * seed);
    double x = (random.nextBoolean() ? -1 : 1) * (105 + 60 * random.nextDouble());
    double diameter = 110 + 70 * random.nextDouble();
    double at;
    do {
      at = -180 + 360 * random.nextDouble();
    } while (Math.abs(at - x) < diameter / 2 + 50);
    String line =
        String.format(
            Locale.ROOT,
            "  switch: {x: %.1f, below: %.1f, out: %.1f, stop: %s, stopOut: %.1f, stroke: %.1f}%n"
                + "  wheel: {side: front, at: %.1f, below: %.1f, diameter: %.1f, out: %.1f}%n  fence:",
            x,
            140 + 60 * random.nextDouble(),
            10 + 25 * random.nextDouble(),
            List.of("below", "above", "left", "right").get(random.nextInt(4)),
            5.5 + 8 * random.nextDouble(),
            2 + 2 * random.nextDouble(),
            at,
            150 + 50 * random.nextDouble(),
            diameter,
            50 + 45 * random.nextDouble());
    return RandomSaw.of(seed).replace("  fence:", line) + (station ? STATION : "") + "paddle: {}\n";
  }

  private static Report report(String text) throws BriefException {
    return Inspector.inspect(
        Units.station(BriefReader.read("made up", text.getBytes(StandardCharsets.UTF_8))));
  }

  private static boolean isTiltBlocked(Report report) {
    return report.passages().stream()
        .anyMatch(p -> p.mover().id().equals("saw/tilts") && p.firstContact().isPresent());
  }

  private static List<Finding> ofThePaddle(Report report) {
    return report.findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .filter(f -> f.about().stream().anyMatch(a -> a.startsWith("paddle/")))
        .toList();
  }

  /** Least distance of the swinging wheel's disc to a box, seen by the operator; by hand. */
  private static double free(Saw saw, double top, Box box) {
    HandWheel wheel = saw.wheel();
    double least = Double.POSITIVE_INFINITY;
    for (double degrees = 0; degrees <= saw.tilt().degrees().nominal(); degrees += 0.25) {
      double angle = Math.toRadians(degrees) * (saw.tilt().side() == Side.RIGHT ? 1 : -1);
      // About +y by the right hand.
      double x = wheel.at().nominal();
      double z = -wheel.below().nominal();
      double toX = x * Math.cos(angle) + z * Math.sin(angle);
      double toZ = top - x * Math.sin(angle) + z * Math.cos(angle);
      double offX = Math.max(0, Math.max(box.low().x() - toX, toX - box.high().x()));
      double offZ = Math.max(0, Math.max(box.low().z() - toZ, toZ - box.high().z()));
      least = Math.min(least, Math.hypot(offX, offZ) - wheel.diameter().nominal() / 2);
    }
    return least;
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void paddle_besideAWheel_isClearOrTheUserIsTold(boolean station) throws Exception {
    int clear = 0;
    int refused = 0;
    int over = 0;
    int near = 0;
    int others = 0;
    for (long seed = 1; seed <= 80; seed++) {
      String text = text(seed, station);
      Report report;
      try {
        report = report(text);
      } catch (DesignException e) {
        assertTrue(e.getMessage().contains("hand-wheel"), "seed " + seed + ": " + e.getMessage());
        refused++;
        continue;
      }
      List<Finding> stops = ofThePaddle(report);
      if (stops.isEmpty()) {
        // A low wheel meets the stand's top before it could meet the paddle.
        boolean elsewhere = isTiltBlocked(report);
        clear += elsewhere ? 0 : 1;
        others += elsewhere ? 1 : 0;
        continue;
      }
      assertEquals(1, stops.size(), "seed " + seed + ": " + stops);
      Finding stop = stops.get(0);
      assertEquals(List.of("saw/tilts", "saw/hand-wheel"), stop.about().subList(0, 2));
      Saw saw = report.station().brief().saw().orElseThrow();
      Box table = report.station().part("saw/table").orElseThrow().body().box();
      Box plate = report.station().part("saw/switch").orElseThrow().body().box();
      double room = free(saw, table.high().z(), plate);
      assertEquals(room < 0, stop.says().contains("over the switch"), "seed " + seed + " " + room);
      if (room < 0) {
        over++;
      } else {
        near++;
        // Half a finger's window, the wood beside it and a cheek do not go in between.
        assertTrue(room < 15 + 25 + 20 + 1, "seed " + seed + ": free " + room);
      }
      assertRemedyHelps(seed, text, stop.remedy());
    }
    assertEquals(80, clear + refused + over + near + others);
    // With at least 70 of board on either side 32 were clear on a station.
    assertTrue(
        clear >= (station ? 36 : 37),
        "clear " + clear + ", over the switch " + over + ", near " + near);
  }

  private static void assertRemedyHelps(long seed, String text, String remedy) throws Exception {
    Matcher degrees = Pattern.compile("saw.tilt.degrees: ([0-9]+)").matcher(remedy);
    if (degrees.find()) {
      String less =
          text.replaceAll("(tilt: .side: [a-z]+, degrees: )[0-9.]+", "$1" + degrees.group(1));
      assertTrue(!less.equals(text), "seed " + seed);
      assertEquals(List.of(), ofThePaddle(report(less)), "seed " + seed + ": " + remedy);
    }
  }

  @Test
  void paddle_thatFindsRoom_isOutsideOfTheSwing() throws Exception {
    int narrowed = 0;
    int looked = 0;
    for (long seed = 1; seed <= 40; seed++) {
      Report report;
      try {
        report = report(text(seed, true));
      } catch (DesignException e) {
        continue;
      }
      if (!ofThePaddle(report).isEmpty() || isTiltBlocked(report)) {
        continue;
      }
      Saw saw = report.station().brief().saw().orElseThrow();
      double top = report.station().part("saw/table").orElseThrow().body().box().high().z();
      Box board = report.station().part("paddle/board").orElseThrow().body().box();
      Box wheel = report.station().part("saw/hand-wheel").orElseThrow().body().box();
      for (String id : List.of("paddle/cheek-left", "paddle/cheek-right", "paddle/board")) {
        Part part = report.station().part(id).orElseThrow();
        // A wheel that does not stand out as far as the cheeks may pass behind them.
        if (part.body().box().high().y() > wheel.low().y()) {
          looked++;
          assertTrue(free(saw, top, part.body().box()) > 0, "seed " + seed + ": " + id);
        }
      }
      narrowed += board.size().x() < 219 ? 1 : 0;
    }
    assertTrue(narrowed >= 3 && looked >= 12, narrowed + " narrowed, " + looked + " looked at");
  }

  @Test
  void paddle_withoutRoomBesideTheUprightWheel_isRefusedInWords() {
    String text =
        text(1, true)
            .replaceAll("switch: .x: [-0-9.]+", "switch: {x: -150")
            .replaceAll("stop: [a-z]+", "stop: below")
            .replaceAll("front, at: [-0-9.]+", "front, at: -10")
            .replaceAll("diameter: [0-9.]+, out", "diameter: 160, out");
    DesignException refused = assertThrows(DesignException.class, () -> report(text));
    // By hand: 140 from middle to middle, less 80.
    assertTrue(refused.getMessage().contains("there are 60 mm"), refused.getMessage());
    assertEquals("saw.wheel", refused.path());
  }
}
