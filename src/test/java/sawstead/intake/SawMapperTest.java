package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.brief.BoltHole;
import sawstead.brief.FenceKind;
import sawstead.brief.Footing;
import sawstead.brief.MiterSlot;
import sawstead.brief.Rail;
import sawstead.brief.Saw;
import sawstead.brief.Side;
import sawstead.brief.SlotKind;
import sawstead.measure.Measured.Origin;

/** Defaults of a saw, from the trade notes: common practice, no source. */
class SawMapperTest {

  private static Saw saw(String... lines) {
    return Briefs.withSaw(lines).saw().orElseThrow();
  }

  private static List<Double> sides(Footing outline) {
    return List.of(
        outline.left().nominal(),
        outline.right().nominal(),
        outline.front().nominal(),
        outline.rear().nominal());
  }

  @Test
  void body_followsTheFeet_withinTheTable() {
    assertEquals(List.of(260.0, 300.0, 30.0, 440.0), sides(saw("name: a").body()));
    Saw wide =
        Briefs.least("left: 250, right: 290, front: 40", "left: 295, right: 290, front: 5")
            .saw()
            .orElseThrow();
    assertEquals(List.of(300.0, 300.0, 0.0, 440.0), sides(wide.body()));
  }

  @Test
  void opening_followsTheFeet_whenTheBottomIsOpen() {
    assertTrue(saw("name: a").opening().isEmpty());
    Saw open = Briefs.least("bottom: closed", "bottom: open").saw().orElseThrow();
    assertEquals(List.of(210.0, 250.0, 80.0, 390.0), sides(open.opening().orElseThrow()));
  }

  @Test
  void bolts_standInTheFootPads_unlessMeasured() {
    Saw saw = saw("bolts: unknown");
    assertFalse(saw.boltsMeasured());
    assertEquals(
        List.of(-230.0, 270.0, -230.0, 270.0),
        saw.bolts().stream().map(BoltHole::x).map(x -> x.nominal()).toList());
    assertEquals(Origin.UNKNOWN, saw.bolts().get(0).y().origin());
    Saw measured = saw("bolts: {diameter: 8, at: [[-200, 50]]}");
    assertTrue(measured.boltsMeasured());
    assertEquals(50, measured.bolts().get(0).y().nominal());
    assertEquals(8, measured.bolts().get(0).diameter().nominal());
  }

  @Test
  void slots_areSortedFromLeftToRight_andHaveAFoot() {
    Saw saw =
        Briefs.least(
                "slots: []",
                "slots: [{at: 140, width: 19, depth: 9.5, kind: t}, {at: -140, width: 16, depth: 7}]")
            .saw()
            .orElseThrow();
    assertEquals(
        List.of(SlotKind.PLAIN, SlotKind.T), saw.slots().stream().map(MiterSlot::kind).toList());
    assertEquals(
        List.of(16.0, 24.5), saw.slots().stream().map(s -> s.footWidth().nominal()).toList());
    assertEquals(
        List.of(0.0, 3.2), saw.slots().stream().map(s -> s.footHeight().nominal()).toList());
  }

  @Test
  void table_isThickerThanItsDeepestSlot() {
    assertEquals(30, saw("name: a").table().thickness().nominal());
    Saw deep =
        Briefs.least("slots: []", "slots: [{at: 0, width: 19, depth: 29.9}]").saw().orElseThrow();
    assertEquals(36, deep.table().thickness().nominal(), 1e-9);
  }

  @Test
  void fence_heldAtOneEnd_hasNoRearRail() {
    Saw saw = saw("name: a");
    assertEquals(FenceKind.ONE_END, saw.fence().kind());
    assertTrue(saw.fence().front().isPresent());
    assertTrue(saw.fence().rear().isEmpty());
    assertEquals(0, saw.fence().runOut().nominal());
  }

  @Test
  void fence_thatExtends_runsOutBeyondItsFrontRail() {
    Saw saw =
        Briefs.least("fence: {kind: one-end, right: 320}", "fence: {kind: extending, right: 600}")
            .saw()
            .orElseThrow();
    Rail rear = saw.fence().rear().orElseThrow();
    assertEquals(340, rear.right().nominal());
    assertEquals(260, saw.fence().runOut().nominal());
    assertEquals(20, saw.fence().runOut().plus());
  }

  @Test
  void behind_ofAContractorSaw_isAMotor_unlessToldNone() {
    assertTrue(saw("name: a").behind().isEmpty());
    assertTrue(saw("like: contractor").behind().get(0).swings());
    assertTrue(saw("like: contractor", "behind: none").behind().isEmpty());
    assertTrue(saw("like: contractor", "behind: []").behind().isEmpty());
  }

  @Test
  void dust_leftOut_isNone() {
    assertTrue(saw("name: a").dust().isEmpty());
    assertTrue(saw("dust: none").dust().isEmpty());
    assertEquals(Side.REAR, saw("dust: {diameter: 38}").dust().orElseThrow().side());
  }

  @Test
  void centre_isTheMiddleOfTheFeet() {
    Saw saw = saw("name: a");
    assertEquals(20, saw.centre().x().nominal());
    assertEquals(235, saw.centre().y().nominal());
    assertEquals(148.5, saw.centre().below().nominal(), 1e-9);
  }

  @Test
  void switchSpot_readsTheKeySwitch() {
    assertEquals(-180, saw("name: a").switchSpot().x().nominal());
    assertEquals(-99, saw("switch: {x: -99}").switchSpot().x().nominal());
  }
}
