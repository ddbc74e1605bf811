package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.assembly.BuildStep;
import sawstead.solid.Box;
import sawstead.station.Station;

/** Rules of tools, on a demo with dados, rabbets and pockets whose owner lacks this or that. */
class ToolCheckTest {
  private static Outcome ask(String tools) {
    return new ToolCheck().judge(new Scene(station(tools)));
  }

  private static Station station(String tools) {
    return Models.changed("quay-shed", "casters: none", "casters: none\n\ntools: {" + tools + "}");
  }

  private static String rules(Outcome outcome) {
    return String.join(
        ", ",
        outcome.findings().stream()
            .map(f -> f.severity().name().toLowerCase(java.util.Locale.ROOT) + " " + f.rule())
            .toList());
  }

  @Test
  void judge_ofSomeoneWhoOwnsTheUsualTools_saysNothing() {
    assertEquals("", rules(ask("")));
  }

  /**
   * The outfeed's box is the widest thing glued up with brads along the same way: its outside is
   * read off the station, so the threshold is not the check's own figure.
   */
  @ParameterizedTest
  @CsvSource({"0.01, note clamps-for-brads", "-0.01, mind tool-needed"})
  void judge_withoutANailer_asksForClampsThatSpanTheBox(double more, String expected) {
    Box around =
        station("").parts().values().stream()
            .filter(p -> p.id().matches("outfeed/(side-left|side-right|front|back)"))
            .map(p -> p.body().box())
            .reduce(Box::union)
            .orElseThrow();
    double span = Math.max(around.size().x(), around.size().y());
    Outcome outcome =
        ask("nailer: {owned: false}, clamps: [{opening: %.3f, count: 2}]".formatted(span + more));
    assertEquals(expected, rules(outcome));
    String words = new Words(sawstead.measure.Unit.MM).length(span);
    Finding finding = outcome.findings().get(0);
    assertTrue((finding.says() + finding.remedy()).contains(words), finding::toString);
  }

  /**
   * Two brads a joint: each is as deep inside as the box's nearest outside across it, which is read
   * off the station; the deepest second one decides.
   */
  @Test
  void judge_withoutANailer_asksForClampsThatReachTheJoint() {
    Scene scene = new Scene(station("nailer: {owned: false}"));
    double deep = 0;
    for (sawstead.assembly.Driving d : scene.plan().drivings()) {
      sawstead.joinery.Fastener brad = d.fastener();
      if (brad.kind() == sawstead.joinery.FastenerKind.BRAD) {
        BuildStep step = scene.plan().steps().get(d.step() - 1);
        Box all =
            step.places().stream()
                .flatMap(id -> scene.station().part(id).stream())
                .filter(p -> p.stock().isPresent())
                .map(p -> p.body().box())
                .reduce(Box::union)
                .orElseThrow();
        deep = Math.max(deep, second(scene, brad, all));
      }
    }
    assertTrue(deep > 1, "nothing lies inside: " + deep);
    String clamps = "nailer: {owned: false}, clamps: [{opening: 2000, count: 2, throat: %.3f}]";
    assertEquals("note clamps-for-brads", rules(ask(clamps.formatted(deep + 0.01))));
    assertEquals("mind tool-needed", rules(ask(clamps.formatted(deep - 0.01))));
  }

  private static double second(Scene scene, sawstead.joinery.Fastener one, Box all) {
    List<Double> in =
        scene.plan().drivings().stream()
            .map(sawstead.assembly.Driving::fastener)
            .filter(f -> f.kind() == one.kind() && f.joins().equals(one.joins()))
            .map(
                f -> {
                  double x = Math.min(f.at().x() - all.low().x(), all.high().x() - f.at().x());
                  double y = Math.min(f.at().y() - all.low().y(), all.high().y() - f.at().y());
                  double z = Math.min(f.at().z() - all.low().z(), all.high().z() - f.at().z());
                  return Math.abs(f.axis().x()) > 0.5
                      ? Math.min(y, z)
                      : Math.abs(f.axis().y()) > 0.5 ? Math.min(x, z) : Math.min(x, y);
                })
            .sorted()
            .toList();
    return in.get(Math.min(1, in.size() - 1));
  }

  @Test
  void judge_withoutANailer_isNotContentWithOneClamp() {
    assertEquals(
        "mind tool-needed",
        rules(ask("nailer: {owned: false}, clamps: [{opening: 2000, count: 1}]")));
  }

  @Test
  void judge_withoutAPocketJig_saysSo() {
    Outcome outcome = ask("pocketJig: {owned: false}");
    assertEquals("mind tool-needed", rules(outcome));
    assertTrue(outcome.findings().get(0).remedy().contains("joint: screw"));
  }

  /** A pocket at the end of a stretcher has its length; one along a wall of the box its height. */
  @Test
  void judge_ofAJigTooLongForTheBoards_saysHowLongTheyAre() {
    Station station = station("pocketJig: {length: 300 mm}");
    Outcome outcome = new ToolCheck().judge(new Scene(station));
    assertEquals("mind jig-room", rules(outcome));
    double high = station.part("outfeed/back").orElseThrow().body().box().size().z();
    assertTrue(high < 300, "the lowest wall is " + high);
    assertTrue(outcome.findings().get(0).about().stream().anyMatch(f -> f.startsWith("outfeed/")));
  }

  /** Low pockets along a wall: the hand round a screwdriver would be in the wall. */
  @Test
  void judge_withoutADrill_namesOnlyWhatNothingElseReaches() {
    Scene scene = new Scene(station("drill: {owned: false}, rightAngle: {owned: true}"));
    Outcome outcome = new ToolCheck().judge(scene);
    assertEquals("mind tool-needed", rules(outcome));
    assertTrue(
        outcome.findings().get(0).about().stream()
            .allMatch(f -> f.matches("outfeed/[a-z-]+/pocket-\\d+")),
        () -> outcome.findings().toString());
    List<BuildStep> steps = scene.plan().steps();
    assertTrue(steps.stream().anyMatch(s -> s.tools().contains("screwdriver")));
  }

  @Test
  void judge_withNothingThatDrivesAScrew_namesTheDrillOnce() {
    assertEquals(
        "mind tool-needed", rules(ask("drill: {owned: false}, screwdriver: {owned: false}")));
  }
}
