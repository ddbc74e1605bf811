package sawstead.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Limits of the small saw: common practice, no source. */
class CuttingRulesTest {
  private static final CuttingRules RULES =
      new CuttingRules(SawLimits.SMALL_SAW, Kerfs.both(3), new Board("birch", 18, 685));

  private static Region mm(int length, int width) {
    return new Region(0, 0, length * 1000, width * 1000);
  }

  private static Guidance guidance(int length, int width, Direction along, int near) {
    return RULES.guidance(mm(length, width), along, near * 1000);
  }

  @Test
  void fitsTable_upToTheLimits_eitherWayRound() {
    assertTrue(RULES.fitsTable(mm(1200, 600)));
    assertTrue(RULES.fitsTable(mm(600, 1200)));
    assertFalse(RULES.fitsTable(mm(1201, 100)));
    assertFalse(RULES.fitsTable(mm(700, 601)));
  }

  @Test
  void fitsTable_ofAHeavyBoard_isDecidedByMass() {
    // 1000 x 600 x 30 mm at 685 kg per cubic metre is 12.33 kg, above 12; 950 long is 11.7 kg.
    CuttingRules heavy =
        new CuttingRules(SawLimits.SMALL_SAW, Kerfs.both(3), new Board("birch", 30, 685));
    assertFalse(heavy.fitsTable(mm(1000, 600)));
    assertTrue(heavy.fitsTable(mm(950, 600)));
  }

  @Test
  void ripByTheLongEdge_goesToTheFence() {
    assertEquals(
        new Guidance(Guide.FENCE, 200_000, true), guidance(800, 500, Direction.LENGTH, 200));
  }

  @Test
  void cutByTheShortEdge_goesOnTheSled() {
    assertEquals(new Guidance(Guide.SLED, 200_000, true), guidance(800, 500, Direction.WIDTH, 200));
    assertEquals(
        new Guidance(Guide.SLED, 100_000, true), guidance(290, 150, Direction.LENGTH, 100));
  }

  @Test
  void stripTooNarrowForTheFence_fallsOffBeyondTheBlade() {
    assertEquals(
        new Guidance(Guide.FENCE, 382_000, true), guidance(800, 400, Direction.LENGTH, 15));
    // A runner 18 wide out of a strip of 115: 115 - 18 - 3 at the fence, never 18 at a stop.
    assertEquals(new Guidance(Guide.FENCE, 94_000, true), guidance(423, 115, Direction.LENGTH, 18));
  }

  @Test
  void widerThanTheFenceGoesOut_isMeasuredFromTheOtherEdge() {
    SawLimits limits = SawLimits.SMALL_SAW.withRipCapacity(250);
    CuttingRules small = new CuttingRules(limits, Kerfs.both(3), new Board("birch", 18, 685));
    assertEquals(
        new Guidance(Guide.FENCE, 97_000, true),
        small.guidance(mm(800, 400), Direction.LENGTH, 300_000));
  }

  @Test
  void tooLargeForTheTable_goesUnderTheRail() {
    assertEquals(Guidance.rail(true), guidance(2440, 1220, Direction.WIDTH, 600));
  }

  @Test
  void narrowLongStrip_getsAPackingStripUnderTheRail() {
    assertEquals(
        new Guidance(Guide.PACKED_RAIL, -1, true), guidance(1800, 150, Direction.LENGTH, 70));
    assertFalse(guidance(1800, 50, Direction.LENGTH, 22).safe());
  }
}
