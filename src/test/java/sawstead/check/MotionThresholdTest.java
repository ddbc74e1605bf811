package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Briefs;
import sawstead.station.Situation;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** One number moved across a threshold worked by hand flips the verdict there, within 0.05 mm. */
class MotionThresholdTest {
  /** How near to a threshold both verdicts are asked for, mm. */
  private static final double NEAR = 0.05;

  private static String model(String name) {
    try {
      return Files.readString(Path.of("models/flawed/" + name + ".yaml"));
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Station station(String text) {
    return Units.station(Briefs.of(text));
  }

  private static Passage passage(Station station, String id) {
    return Passages.of(station.with(java.util.List.of()), 0.05).stream()
        .filter(p -> p.mover().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isBlocked(String text, String id) {
    return passage(station(text), id).firstContact().isPresent();
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  /**
   * REF-GEO-16 at the level of a station: the leaf w x t about its pin meets a wall at the distance
   * d beyond it by the angle arccos(d/R) - arctan(t'/w'), R the distance of its far upper corner.
   */
  @Test
  void leaf_meetsTheWallAtTheAngleOfGeometry() {
    String text = model("leaf-meets-wall");
    Station station = station(text);
    Box leaf = station.part("outfeed/leaf").orElseThrow().body().box();
    Turn turn = (Turn) station.mover("outfeed/leaf-folds").orElseThrow().motion();
    double w = leaf.high().y() - turn.at().y();
    double t = leaf.high().z() - turn.at().z();
    double radius = Math.hypot(w, t);
    double d = 1012.5 + 0.001 - turn.at().y();
    double angle = Math.toDegrees(Math.atan2(t, w) - Math.acos(d / radius));
    assertEquals(
        angle, passage(station, "outfeed/leaf-folds").firstContact().orElseThrow().at(), 1e-3);
    // The corner's furthest reach decides: deeper than the tolerance, or not.
    double furthest = turn.at().y() + radius - 0.05;
    assertTrue(
        isBlocked(
            text.replace("rear: 1012.5", "rear: " + mm(furthest - NEAR)), "outfeed/leaf-folds"));
    assertFalse(
        isBlocked(
            text.replace("rear: 1012.5", "rear: " + mm(furthest + NEAR)), "outfeed/leaf-folds"));
  }

  /** The folded leaf's underside lies a knuckle and its play behind the back. */
  @Test
  void leaf_passesAPlateOnlyWithAThickEnoughKnuckle() {
    String text = model("small-knuckle");
    Station station = station(text);
    Box back = station.part("outfeed/back").orElseThrow().body().box();
    Box leaf = station.part("outfeed/leaf").orElseThrow().body().box();
    Box plate = station.part("own/plate").orElseThrow().body().box();
    Vec pin = ((Turn) station.mover("outfeed/leaf-folds").orElseThrow().motion()).at();
    double folded = pin.y() + leaf.low().z() - pin.z();
    double missing = plate.high().y() - folded;
    assertTrue(missing > 0 && folded > back.high().y(), folded + " " + plate);
    // Pin and underside both move by half of what the knuckle grows.
    double enough = 6 + missing - 0.05;
    assertTrue(
        isBlocked(
            text.replace("knuckle: 6", "knuckle: " + mm(enough - NEAR)), "outfeed/leaf-folds"));
    assertFalse(
        isBlocked(
            text.replace("knuckle: 6", "knuckle: " + mm(enough + NEAR)), "outfeed/leaf-folds"));
  }

  /** A bin as high as the clamp's underside is touched by no more than the tolerance. */
  @Test
  void clamp_passesABinBelowIt() {
    String text = model("clamp-meets-bin");
    Station station = station(text);
    Box clamp = station.part("saw/fence-clamp").orElseThrow().body().box();
    Box bin = station.part("wing-right/bin").orElseThrow().body().box();
    double lower = bin.high().z() - clamp.low().z() - 0.05;
    assertTrue(lower > 0, clamp + " " + bin);
    assertTrue(isBlocked(lowered(text, lower - NEAR), "saw/fence-travels"));
    assertFalse(isBlocked(lowered(text, lower + NEAR), "saw/fence-travels"));
  }

  private static String lowered(String text, double by) {
    return text.replace("[220, -60, 800]", "[220, -60, " + mm(800 - by) + "]");
  }

  /**
   * Closed trigonometry: the trunnion's lower left corner, R from the axis and a degrees from
   * straight down, is as low as the stand's top, H below the table, when tilted by a - arccos(H/R).
   */
  @Test
  void trunnion_meetsTheStandsTopAtTheAngleOfGeometry() throws Exception {
    String text =
        Files.readString(Path.of("models/quay-shed.yaml"))
            .replace(
                "bottom: open\n  opening: {left: 150, right: 180, front: 90, rear: 360}",
                "bottom: closed");
    Station station = station(trunnion(text, 200, 250));
    double h =
        station.part("saw/table").orElseThrow().body().box().high().z()
            - station.part("stand/top").orElseThrow().body().box().high().z();
    double angle =
        Math.toDegrees(Math.atan2(200, 250) - Math.acos((h + 0.001) / Math.hypot(200, 250)));
    Passage passage = passage(station, "saw/tilts");
    assertEquals(angle, passage.firstContact().orElseThrow().at(), 1e-3);
    // 45 degrees take the corner past its lowest point, R below the axis.
    double wide = Math.sqrt((h + 0.05) * (h + 0.05) - 250 * 250);
    assertFalse(isBlocked(trunnion(text, wide - NEAR, 250), "saw/tilts"));
    assertTrue(isBlocked(trunnion(text, wide + NEAR, 250), "saw/tilts"));
  }

  private static String trunnion(String text, double left, double bottom) {
    return text.replace(
        "  mass: 19\n",
        "  mass: 19\n  tilt: {side: left, trunnion: {left: "
            + mm(left)
            + ", right: 20, front: 100, rear: 300, bottom: "
            + mm(bottom)
            + "}}\n");
  }

  /** A square plug passes a round hole by its diagonal. */
  @Test
  void plug_passesAPortByItsDiagonal() {
    String text = model("small-port").replace("41 ± 1", "41 ± 0");
    String id = "ports/cord-out-plug-passes";
    assertTrue(isBlocked(text.replace("diameter: 25", "diameter: " + mm(41 - NEAR)), id));
    assertFalse(isBlocked(text.replace("diameter: 25", "diameter: " + mm(41 + NEAR)), id));
  }

  /** The bar's tip, a bar's reach ahead of the face behind the blade, or the groove's end. */
  @Test
  void bar_meetsTheEndOfItsGroove() {
    Station station = station(model("short-groove"));
    Passage passage = passage(station, "gauge/slot-1-travels");
    Situation situation = Situation.of(station, passage.mover());
    double tip = situation.moved().get(0).box().high().y();
    double lidRear = station.part("outfeed/lid").orElseThrow().body().box().high().y();
    double end = lidRear - 30;
    assertEquals(
        end + 0.001,
        tip + passage.firstContact().orElseThrow().at() - passage.mover().motion().from(),
        1e-6);
  }

  /** What is said to clear does clear, and a little less does not. */
  @Test
  void remedy_isTheLeastThatClears() {
    Station station = station(model("clamp-meets-bin"));
    Passage passage = passage(station, "saw/fence-travels");
    Clearing.Shift shift = Clearing.of(station, passage, 0.05).orElseThrow();
    assertEquals(Way.DOWN, shift.way());
    String text = model("clamp-meets-bin");
    assertFalse(isBlocked(lowered(text, shift.by()), "saw/fence-travels"));
    assertTrue(isBlocked(lowered(text, shift.by() - NEAR), "saw/fence-travels"));
  }
}
