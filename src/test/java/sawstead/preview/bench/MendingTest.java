package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.check.Finding;
import sawstead.check.Severity;
import sawstead.intake.BriefEdit;
import sawstead.preview.bench.Trial.Worth;

/** Every claim of a trial is put to the whole program again: read, designed and judged. */
class MendingTest {
  private static String text(String model) throws Exception {
    return Files.readString(Path.of("models/flawed/" + model + ".yaml"));
  }

  private static Snapshot judged(String text) {
    return Bench.judge(Bench.design("models/flawed/model.yaml", text));
  }

  private static List<Finding> stops(Snapshot judged) {
    return judged.report().orElseThrow().findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .toList();
  }

  private static Trial trial(String text, Dial dial) {
    Snapshot judged = judged(text);
    return Mending.of("models/flawed/model.yaml", judged, stops(judged).get(0))
        .orElseThrow()
        .by(dial, () -> true);
  }

  private static Dial rule(String path, double low, double high, double at) {
    return new Dial.Rule(
        path, low, high, at, 1, v -> String.format(Locale.ROOT, "%.0f", Math.rint(v)));
  }

  @ParameterizedTest
  @CsvSource({
    "shelf-over-lid, extras[0].place.at[2], 505, 1515, 1010",
    "big-router, station.wings.right.width, 160, 480, 320",
    "near-hand, sleds[0].hands, 10, 210, 110",
    "leaf-meets-wall, room.rear, 507, 1518, 1013",
  })
  void by_aNumber_theLeastThatMends(String model, String path, double low, double high, double at)
      throws Exception {
    String text = text(model);
    Trial trial = trial(text, rule(path, low, high, at));
    assertEquals(Worth.MENDS_ALL, trial.worth());
    assertEquals(List.of(), stops(judged(set(text, path, trial.value()))), "it may be cut");
    double value = Double.parseDouble(trial.value());
    String less = String.format(Locale.ROOT, "%.0f", value - 2 * Math.signum(value - at));
    assertFalse(stops(judged(set(text, path, less))).isEmpty(), "two marks less do not: " + less);
  }

  @Test
  void by_choice_theWordThatMends() throws Exception {
    String text = text("blocked-knife");
    Trial trial = trial(text, new Dial.Words("inserts[0].knifeSlot", List.of("true", "false")));
    assertEquals(new Trial("inserts[0].knifeSlot", Worth.MENDS_ALL, "true"), trial);
    assertEquals(List.of(), stops(judged(set(text, trial.path(), trial.value()))));
  }

  @Test
  void byLeaving_aWishToTheProgram_whereNoNumberMendsIt() throws Exception {
    String text = text("short-paddle");
    assertEquals(Worth.BEARS, trial(text, rule("paddle.press", 6, 130, 30)).worth());
    Snapshot judged = judged(text);
    Trial trial =
        Mending.of("model.yaml", judged, stops(judged).get(0))
            .orElseThrow()
            .byLeaving("paddle.press")
            .orElseThrow();
    assertEquals(new Trial("paddle.press", Worth.MENDS_ALL, "unknown"), trial);
    assertEquals(List.of(), stops(judged(set(text, trial.path(), trial.value()))));
  }

  @Test
  void by_whatHasNothingToDoWithIt_nothing() throws Exception {
    assertEquals(
        Worth.NOTHING, trial(text("shelf-over-lid"), rule("saw.cord.plug", 10, 80, 40)).worth());
  }

  @ParameterizedTest
  @CsvSource({"diameter, 15, 45, 30", "'at[0]', 30, 90, 60"})
  void by_aHoleElsewhereInTheBoard_nothing(String key, double low, double high, double at)
      throws Exception {
    String hole = "id: shelf/over, cuts: [{circle: {at: [60, 60], diameter: 30}}],";
    String text = text("shelf-over-lid").replace("id: shelf/over,", hole);
    Dial dial = rule("extras[0].cuts[0].circle." + key, low, high, at);
    assertEquals(Worth.NOTHING, trial(text, dial).worth());
  }

  @Test
  void by_whatMovesItButNotFarEnough_bears() throws Exception {
    assertEquals(
        Worth.BEARS,
        trial(text("shelf-over-lid"), rule("extras[0].place.at[2]", 1000, 1020, 1010)).worth());
  }

  @Test
  void by_doingWithoutTheBody_isNoMending() throws Exception {
    String text = text("near-hand");
    Trial trial = trial(text, new Dial.Words("sleds[0].kind", List.of("crosscut", "small-parts")));
    assertEquals(Worth.NOTHING, trial.worth());
    assertTrue(
        stops(judged(set(text, "sleds[0].kind", "crosscut"))).isEmpty(), "although it would");
  }

  @Test
  void by_stopsWhenNobodyWantsItAnyMore() throws Exception {
    Snapshot judged = judged(text("near-hand"));
    assertEquals(
        Worth.NOTHING,
        Mending.of("model.yaml", judged, stops(judged).get(0))
            .orElseThrow()
            .by(rule("sleds[0].hands", 10, 210, 110), () -> false)
            .worth());
  }

  private static String set(String text, String path, String value) {
    return BriefEdit.set(text, path, value).orElseThrow().in(text);
  }
}
