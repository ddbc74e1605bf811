package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.brief.Blade;
import sawstead.brief.Saw;
import sawstead.intake.BriefReader;
import sawstead.solid.Box;
import sawstead.solid.Outline;
import sawstead.solid.Slide;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** Only the brief changes: one slot or two, unequal, plain, T or tabbed, left or right tilt. */
class SledsOnUnseenSawsTest {

  /** Solids are on a grid of 2^-20 mm, rounded once at either end. */
  private static final double GRID = 2e-6;

  private static Report report(long seed, String more) {
    try {
      byte[] text = (RandomSaw.of(seed) + more).getBytes(StandardCharsets.UTF_8);
      return Inspector.inspect(Units.station(BriefReader.read("seed " + seed, text)));
    } catch (Exception e) {
      throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void sled_ofAnUnseenSaw_isClearAndItsFiguresAreThoseOfTheHand(long seed) {
    String bridge = seed % 3 == 0 ? "false" : "true";
    Report report = report(seed, "sleds:\n  - {id: cross, widest: 180, bridge: " + bridge + "}\n");
    assertEquals(
        List.of(),
        report.findings().stream().filter(f -> f.severity() == Severity.STOP).toList(),
        "seed " + seed);
    assertEquals(List.of(), report.clashes(), "seed " + seed);
    Station station = report.station();
    assertTrue(
        station.parts().keySet().stream().allMatch(id -> id.matches("(saw|cross)/.*")),
        station.parts().keySet().toString());
    assertTrigonometry(station, seed);
    assertBalance(station, seed);
  }

  /** Pythagoras on the blade's circle (REF-TRD-08), from the brief alone. */
  private static void assertTrigonometry(Station station, long seed) {
    Saw saw = station.brief().saw().orElseThrow();
    Blade blade = saw.blade();
    double r = blade.diameter().nominal() / 2;
    double up = blade.height().nominal();
    double t = station.brief().stock().get(0).thickness().nominal();
    double base = Math.sqrt(r * r - (r - up + t) * (r - up + t));
    double board = up - 3;
    double atBoard = Math.sqrt(r * r - (r - up + board) * (r - up + board));
    Map<String, Figure> figures = station.figures();
    String at = "seed " + seed;
    assertEquals(2 * base, figures.get("sled-cross-chordAtBase").nominal(), 1e-9, at);
    assertEquals(up - t - 3, figures.get("sled-cross-thickest").nominal(), 1e-9, at);
    // From the board's far edge 5 mm before the blade to its top cut through at the fence.
    assertEquals(base + 5 + 180 - atBoard, figures.get("sled-cross-stroke").nominal(), 1e-9, at);
    Slide stroke = (Slide) station.mover("cross/stroke").orElseThrow().motion();
    assertEquals(stroke.to() - stroke.from(), figures.get("sled-cross-stroke").nominal(), 1e-9, at);
    // At the end the blade, at the height of the board's top, has just passed the fence's face.
    Box face = onTable(station, "cross/fence-face", stroke.to());
    assertEquals(blade.arbor().nominal() - atBoard, face.high().y(), GRID, at);
    // What is left of the guard behind the blade there, 25 mm at least.
    Box end = onTable(station, "cross/guard-end", stroke.to());
    double left = blade.arbor().nominal() - base - end.high().y();
    assertTrue(left >= 25 - GRID, at + ": " + left);
    assertEquals(left, figures.get("sled-cross-guardSpare").nominal(), GRID, at);
    // The stop below the runner touches table or rail exactly there.
    double touches =
        station.parts().keySet().stream()
            .filter(id -> id.endsWith("-stop"))
            .mapToDouble(id -> onTable(station, id, stroke.to()).high().y())
            .max()
            .orElseThrow();
    double out = saw.fence().front().map(f -> f.out().nominal()).orElse(0.0);
    assertTrue(
        Math.abs(touches) < GRID || Math.abs(touches + out) < GRID, at + ": stop at " + touches);
  }

  /** Sum of moments over sum of masses, against the figure, which knows neither kerf nor track. */
  private static void assertBalance(Station station, long seed) {
    Slide stroke = (Slide) station.mover("cross/stroke").orElseThrow().motion();
    double mass = 0;
    double moment = 0;
    for (String id : station.mover("cross/stroke").orElseThrow().moves()) {
      Part part = station.part(id).orElseThrow();
      Vec centre = part.body().centroid();
      mass += part.mass();
      moment += part.mass() * (centre.y() + stroke.from());
    }
    double figure = station.figures().get("sled-cross-balance").nominal();
    assertEquals(moment / mass, figure, 6, "seed " + seed);
  }

  private static Box onTable(Station station, String id, double at) {
    Mover mover = station.mover("cross/stroke").orElseThrow();
    return station
        .part(id)
        .orElseThrow()
        .body()
        .moved(mover.motion().at(at).after(mover.setting().set()))
        .box();
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22})
  void sled_besideAStation_isClearAndDoesNotTipIt(long seed) {
    String station =
        "vac: {width: 380, depth: 370, height: 400, hose: {cuff: 45}}\ncasters: {height: 70}\n"
            + "station: {workingHeight: 960}\n";
    Report with = report(seed, station + "sleds:\n  - {id: cross, widest: 200}\n");
    Report without = report(seed, station);
    assertEquals(stops(without), stops(with), "seed " + seed);
    assertEquals(
        margin(without, "static-margin"), margin(with, "static-margin"), 1e-9, "seed " + seed);
    assertTrue(
        with.passages().stream()
            .filter(p -> p.mover().id().equals("cross/stroke"))
            .allMatch(p -> p.firstContact().isEmpty()),
        "seed " + seed);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38, 39, 40})
  void insertAndSmallSled_ofAnUnseenSaw_areClear(long seed) {
    Report report =
        report(seed, "sleds:\n  - {id: small, kind: small-parts}\ninserts:\n  - {id: zero}\n");
    assertEquals(List.of(), stops(report), "seed " + seed);
    assertEquals(List.of(), report.clashes(), "seed " + seed);
    Station station = report.station();
    assertTrue(station.parts().containsKey("zero/plate"), "seed " + seed);
    assertTrue(station.mover("small/clamp-opens").isPresent(), "seed " + seed);
    // The insert in the throat: flush or a shaving shy, and inside it by the gap all round.
    Mover lifts = station.mover("zero/lifts-out").orElseThrow();
    Box box = station.part("zero/plate").orElseThrow().body().moved(lifts.setting().set()).box();
    Saw saw = station.brief().saw().orElseThrow();
    assertEquals(saw.table().height().nominal(), box.high().z(), GRID, "seed " + seed);
    assertInside(
        box.low().y() - (saw.blade().arbor().nominal() - saw.throat().length().nominal() / 2),
        seed);
    assertInside(
        saw.throat().x().nominal() + saw.throat().width().nominal() / 2 - box.high().x(), seed);
  }

  /** The gap of 0.2 mm; a round end may be drawn fuller by what arcs are off by, never smaller. */
  private static void assertInside(double gap, long seed) {
    assertTrue(gap <= 0.2 + GRID, "seed " + seed + ": " + gap);
    assertTrue(gap >= 0.2 - Outline.ARC_ERROR - GRID, "seed " + seed + ": " + gap);
  }

  private static List<String> stops(Report report) {
    return report.findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .map(Finding::says)
        .toList();
  }

  private static double margin(Report report, String name) {
    return report.margins().stream()
        .filter(m -> m.name().equals(name))
        .findFirst()
        .orElseThrow()
        .has();
  }
}
