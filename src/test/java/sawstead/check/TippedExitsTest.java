package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.assembly.Exit;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Turn;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/**
 * A vac behind a facing of the user's own, whose doorway leans: it only comes out tipped, and each
 * part of that way is a motion that can be made.
 */
class TippedExitsTest {
  private static final double WIDE = 200;
  private static final double HIGH = 215;

  /**
   * A stand that is open to one side, with two boards before that side: their edges are parallel to
   * each other, {@code lean} degrees off the upright, as far apart as the vac is wide and some air.
   *
   * @param side front or left
   * @param lean degrees; the doorway's upper end is further left (or to the front) where positive
   * @param air on each side of the tipped vac, mm
   * @param aside how far the doorway is off where the tipped vac goes straight through its middle,
   *     mm
   */
  private static Station leaning(String side, double lean, double air, double aside) {
    String text = "";
    try {
      text =
          Files.readString(Path.of("models/flawed/tall-vac.yaml"))
              .replaceAll(
                  "vac: .width: [0-9]+, depth: [0-9]+, height: [0-9]+",
                  String.format(
                      Locale.ROOT,
                      "vac: {width: %.0f, depth: %.0f, height: %.0f",
                      WIDE,
                      WIDE,
                      HIGH))
              .replace(side + ": stretchers", side + ": open")
              .replace(": stretchers", ": panel");
      Station bare = read(text);
      Box stand =
          bare.parts().values().stream()
              .filter(p -> p.unit().equals("stand"))
              .map(p -> p.body().box())
              .reduce(Box::union)
              .orElseThrow();
      Box vac = bare.part("vac/body").orElseThrow().body().box();
      return read(text + boards(side.equals("front"), lean, air, aside, stand, vac));
    } catch (IOException | BriefException e) {
      throw new AssertionError(e.getMessage() + "\n" + text, e);
    }
  }

  private static String boards(
      boolean front, double lean, double air, double aside, Box stand, Box vac) {
    double from = (front ? stand.low().x() : stand.low().y()) - 250;
    double to = (front ? stand.high().x() : stand.high().y()) + 250;
    double high = stand.high().z() - 20;
    double shift = Math.tan(Math.toRadians(lean));
    double gap = (WIDE + 2 * air) / Math.cos(Math.toRadians(lean));
    // The edge about which the vac is tipped stands beside the foot of the doorway's jamb.
    double edge =
        lean > 0
            ? (front ? vac.low().x() : vac.low().y())
            : (front ? vac.high().x() : vac.high().y());
    double jamb = (lean > 0 ? -air : air) / Math.cos(Math.toRadians(lean));
    double foot = edge + jamb + shift * vac.low().z() + aside - (lean > 0 ? 0 : gap);
    String at = front ? "[%.4f, %.4f, 0]" : "[%2$.4f, %1$.4f, 0]";
    double plane = front ? stand.low().y() : stand.low().x() - 17.8;
    String turns =
        front ? "[{about: x, degrees: 90}]" : "[{about: x, degrees: 90}, {about: z, degrees: 90}]";
    double a = foot - from;
    double b = foot + gap - from;
    double end = to - from;
    return "extras:\n"
        + quad("low", turns, at, from, plane, 0, a, a - shift * high, 0, high)
        + quad("high", turns, at, from, plane, b, end, end, b - shift * high, high);
  }

  private static String quad(
      String name,
      String turns,
      String at,
      double from,
      double plane,
      double u0,
      double u1,
      double u2,
      double u3,
      double high) {
    return String.format(
            Locale.ROOT,
            "  - {id: facing-%s, stock: birch-18, outline: [[%.4f,0],[%.4f,0],[%.4f,%.4f],[%.4f,%.4f]], ",
            name,
            u0,
            u1,
            u2,
            high,
            u3,
            high)
        + String.format(Locale.ROOT, "place: {at: " + at + ", turns: ", from, plane)
        + turns
        + "}}\n";
  }

  private static Station read(String text) throws BriefException {
    return Units.station(BriefReader.read("leaning", text.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Passage> waysOut(Report report) {
    return report.passages().stream()
        .filter(p -> p.mover().id().startsWith("vac/body-comes-out"))
        .toList();
  }

  private static Exit exit(Report report) {
    return report.plan().exits().stream()
        .filter(e -> e.id().equals("vac/body"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void motions_ofAVacThatIsTipped_areATurnAndThenItsLegs() throws Exception {
    Report report =
        Inspector.inspect(
            read(Files.readString(Path.of("src/test/resources/cases/exits/tipped-vac.yaml"))));
    assertEquals(Exit.Verdict.TILTED, exit(report).verdict());
    List<Passage> ways = waysOut(report);
    assertEquals(
        List.of("vac/body-comes-out-1", "vac/body-comes-out-2"),
        ways.stream().map(w -> w.mover().id()).toList());
    Turn turn = (Turn) ways.get(0).mover().motion();
    assertEquals(15, turn.to() - turn.from());
    // The air of the doorway, as the brief has it.
    assertEquals(4, ways.get(1).leastClearance().orElseThrow(), 0.01);
    assertLeaves(report, "by hand");
    assertTrue(
        report.findings().stream()
            .anyMatch(
                f -> f.rule().equals("vac-tilted") && f.says().contains("15 degrees to the left")),
        report.findings()::toString);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void motions_ofAWayThatNobodyDrew_meetNothing(long seed) {
    Random random = new Random(7919 * seed);
    double lean =
        (random.nextBoolean() ? 1 : -1) * 5 * (1 + random.nextInt(4)) + random.nextDouble() - 0.5;
    Report report =
        Inspector.inspect(
            leaning(
                random.nextBoolean() ? "front" : "left",
                lean,
                4 + 3 * random.nextDouble(),
                2 * random.nextDouble() - 1));
    String where = "seed " + seed + ", leaning by " + lean + ": " + exit(report);
    assertEquals(Exit.Verdict.TILTED, exit(report).verdict(), where);
    assertLeaves(report, where);
  }

  /**
   * What the tape shows is one way: each motion begins where the one before ended, meets nothing,
   * overlaps nothing at its end (looked at with the exact overlap, which neither the search nor the
   * sweep uses), and the last ends outside of everything.
   */
  private static void assertLeaves(Report report, String where) {
    List<Passage> ways = waysOut(report);
    assertTrue(ways.size() >= 2, where);
    Body vac = report.station().part("vac/body").orElseThrow().body();
    Placement place = Placement.identity();
    for (Passage way : ways) {
      Mover mover = way.mover();
      assertEquals(List.of("vac/body"), mover.moves(), where);
      assertSame(place, mover.setting().set(), where);
      assertTrue(way.firstContact().isEmpty(), where + way.firstContact());
      assertEquals(mover.motion().rest(), mover.motion().from(), where);
      place = mover.motion().at(mover.motion().to()).after(mover.setting().set());
      for (Part part : report.station().parts().values()) {
        if (!part.unit().equals("vac")) {
          double depth =
              Overlap.between(vac.moved(place), part.body()).map(Overlap::depth).orElse(0.0);
          assertTrue(depth <= 0.05, where + ": " + mover.id() + " ends in " + part.id());
        }
      }
    }
    Box around =
        report.station().parts().values().stream()
            .filter(p -> !p.unit().equals("vac"))
            .map(p -> p.body().box())
            .reduce(Box::union)
            .orElseThrow();
    assertTrue(vac.moved(place).box().distance(around) > 1, where);
  }

  private static void assertSame(Placement expected, Placement found, String where) {
    double[] a = expected.columnMajor();
    double[] b = found.columnMajor();
    for (int i = 0; i < a.length; i++) {
      assertEquals(a[i], b[i], 1e-9, where);
    }
  }

  /** A vac that leaves by a turn and legs still stands in the station, and loads its casters. */
  @Test
  void balance_ofAStationWhoseVacIsTippedOut_countsTheVac() {
    Station station = leaning("front", 15, 4, 0);
    double with = Balance.of(new Scene(station)).orElseThrow().mass();
    double parts =
        new Scene(station)
            .parts().stream()
                .filter(
                    p ->
                        !Standing.alone(station.parts().values().stream().toList())
                            .contains(p.id()))
                .mapToDouble(Part::mass)
                .sum();
    assertEquals(parts, with, 1e-9);
  }
}
