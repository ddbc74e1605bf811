package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.DesignException;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/** A point d behind and h below an axis lies d cos a + h sin a behind it after the angle a. */
class PaddleCheckTest {
  private static final double NEAR = 0.05;

  private static final String SAW =
      SledBriefs.SAW.replace(
          "  slots:",
          "  switch: {x: -200, below: 150, out: 20, stopOut: 6, stroke: 4}\n  wheel: {side: right}\n"
              + "  slots:");

  private static List<String> grave(String paddle) {
    return SledBriefs.grave(SledBriefs.ask(new PaddleCheck(), SAW + "paddle: {" + paddle + "}\n"));
  }

  private static Turn swing(Station station) {
    return (Turn) station.mover("paddle/presses").orElseThrow().motion();
  }

  private static Box box(Station station, String id) {
    return station.part(id).orElseThrow().body().box();
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.4f mm", value);
  }

  @Test
  void paddle_asDesigned_pressesTheStopAtTheAngleOfTrigonometry() {
    Station station = SledBriefs.station(SAW + "paddle: {}\n");
    assertEquals(List.of(), grave(""));
    Turn turn = swing(station);
    Box press = box(station, "paddle/press");
    double d = press.high().y() - turn.at().y();
    double h = turn.at().z() - press.low().z();
    // One mm more than the stroke, from the face of the stop: body 30, plate 20, stop 6.
    double wanted = 30 - 20 - 6 + 4 + 1 - turn.at().y();
    double a = Math.atan2(h, d) - Math.acos(wanted / Math.hypot(h, d));
    assertEquals(Math.toDegrees(a), turn.to(), 1e-6);
    assertEquals(8, 30 - 20 - 6 - press.high().y(), 1e-5);
    // There it meets the middle of the stop, which is the plate's lower half.
    double met = turn.at().z() - h * Math.cos(a) + d * Math.sin(a);
    assertEquals(330 - 150 - 15, met + 6, 1e-4);
    // The board's back, at the bumper's lower edge.
    Box bumper = box(station, "paddle/bumper");
    double below = turn.at().z() - bumper.low().z();
    assertEquals(turn.at().y() + 6 / Math.cos(a) + below * Math.tan(a), bumper.low().y(), 1e-5);
  }

  @Test
  void pressBlock_oneTwentiethTooShort_doesNotPress() {
    Station station = SledBriefs.station(SAW + "paddle: {travel: 7}\n");
    Turn turn = swing(station);
    double h = turn.at().z() - box(station, "paddle/press").low().z();
    double a = Math.toRadians(7);
    double enough = (4 + 4 - turn.at().y() - h * Math.sin(a)) / Math.cos(a) - 6;
    assertEquals(List.of("stop paddle-short"), grave("travel: 7, press: " + mm(enough - NEAR)));
    assertEquals(List.of(), grave("travel: 7, press: " + mm(enough + NEAR)));
  }

  @Test
  void travel_thatEndsTooSoon_doesNotPress() {
    Station station = SledBriefs.station(SAW + "paddle: {travel: 7}\n");
    Turn turn = swing(station);
    Box press = box(station, "paddle/press");
    double d = press.high().y() - turn.at().y();
    double h = turn.at().z() - press.low().z();
    double wanted = 4 + 4 - turn.at().y();
    double a = Math.toDegrees(Math.atan2(h, d) - Math.acos(wanted / Math.hypot(h, d)));
    assertTrue(a > 4 && a < 10, "angle " + a);
    assertTrue(grave("travel: 4").contains("stop paddle-short"));
  }

  @Test
  void paddle_letGo_hangsByItsBalancePoint() {
    Station station = SledBriefs.station(SAW + "paddle: {gap: 5}\n");
    Turn turn = swing(station);
    double moment = 0;
    double down = 0;
    for (String id : List.of("paddle/board", "paddle/press")) {
      Part part = station.part(id).orElseThrow();
      Vec centre = part.body().centroid();
      moment += part.mass() * (centre.y() - turn.at().y());
      down += part.mass() * (turn.at().z() - centre.z());
    }
    double hangs = Math.atan2(moment, down);
    assertEquals(-Math.toDegrees(hangs), turn.from(), 1e-9);
    Box press = box(station, "paddle/press");
    double d = press.high().y() - turn.at().y();
    double h = turn.at().z() - press.high().z();
    double gap = 4 - turn.at().y() - (d * Math.cos(hangs) - h * Math.sin(hangs));
    Outcome outcome = SledBriefs.ask(new PaddleCheck(), SAW + "paddle: {gap: 5}\n");
    Margin margin =
        outcome.margins().stream()
            .filter(m -> m.name().equals("paddle-rests"))
            .findFirst()
            .orElseThrow();
    assertEquals(gap, margin.has(), 1e-3);
    assertTrue(grave("gap: 0").contains("stop paddle-rests"));
  }

  @Test
  void everyHalf_mayBeTheStop_andTheStartIsNeverMet() {
    for (String half : List.of("below", "above", "left", "right")) {
      String text = SAW.replace("stroke: 4", "stroke: 4, stop: " + half) + "paddle: {}\n";
      Report report = Inspector.inspect(SledBriefs.station(text));
      List<String> stops = new ArrayList<>();
      report.findings().stream()
          .filter(f -> f.severity() == Severity.STOP)
          .forEach(f -> stops.add(half + ": " + f.says()));
      assertEquals(List.of(), stops);
      assertEquals(List.of(), report.clashes(), half);
    }
  }

  /** So far beyond the stop the block's upper edge has risen to the half above, the start. */
  @Test
  void travel_farBeyondTheStop_comesToTheStart() {
    List<String> told = grave("travel: 22");
    assertTrue(told.contains("stop paddle-start"), told.toString());
    Station station = SledBriefs.station(SAW + "paddle: {travel: 22}\n");
    Turn turn = swing(station);
    Box press = box(station, "paddle/press");
    double d = press.high().y() - turn.at().y();
    double h = turn.at().z() - press.high().z();
    double a = Math.toRadians(22);
    // The upper far corner, by hand, is above the plate's middle and inside the plate.
    assertTrue(turn.at().z() - h * Math.cos(a) + d * Math.sin(a) > 330 - 150);
    assertTrue(turn.at().y() + d * Math.cos(a) + h * Math.sin(a) > 30 - 20 - 3);
  }

  @Test
  void switchTooHighOrPaddleTooShort_isRefusedInWords() {
    for (String high : List.of("60", "90")) {
      String text = SAW.replace("below: 150", "below: " + high) + "paddle: {}\n";
      DesignException refused = assertThrows(DesignException.class, () -> SledBriefs.station(text));
      assertTrue(refused.getMessage().contains("axis"), refused.getMessage());
    }
    assertThrows(DesignException.class, () -> SledBriefs.station(SAW + "paddle: {bottom: 300}\n"));
  }

  /** The whole start is free, whatever lies between it and the top of the board. */
  @Test
  void window_leavesTheStartFree() {
    for (String below : List.of("125", "150", "190")) {
      Station station =
          SledBriefs.station(SAW.replace("below: 150", "below: " + below) + "paddle: {}\n");
      double middle = 330 - Double.parseDouble(below);
      // A finger of 16 on its way to each corner of the start's half of the plate.
      for (double x : new double[] {-220, -180}) {
        for (double z : new double[] {middle + 9, middle + 21}) {
          Box finger = new Box(new Vec(x - 8, -300, z - 8), new Vec(x + 8, 9, z + 8));
          for (String id : List.of("paddle/board", "paddle/press")) {
            assertTrue(
                Overlap.between(
                        Part.box(PartKind.ENVELOPE, "finger", finger, 0).body(),
                        station.part(id).orElseThrow().body())
                    .isEmpty(),
                id + " before the start, switch at " + below + ": " + x + ", " + z);
          }
        }
      }
    }
  }
}
