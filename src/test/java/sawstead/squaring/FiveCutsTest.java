package sawstead.squaring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FiveCutsTest {

  private static FiveCuts cuts(double a, double b, double length, double band) {
    return new FiveCuts(Hand.LEFT, StripEnd.NEAR, Reading.of(a, band), Reading.of(b, band), length);
  }

  /** REF-FIV-02: 25.40 and 25.10 over 500; the same in inches. */
  @Test
  void squareness_ofTheHandbookExample_isAQuarterOfTheTaper() {
    assertEquals(0.0085944, cuts(25.40, 25.10, 500, 0).squareness().degrees(), 5e-8);
    assertEquals(0.0085944, cuts(25.4, 0.988 * 25.4, 508, 0).squareness().degrees(), 5e-8);
    Adjustment move = Adjustment.of(cuts(25.40, 25.10, 500, 0).squareness(), Hand.LEFT, 600);
    assertEquals(-0.090, move.move(), 5e-8);
  }

  /**
   * REF-FIV-03: 2.0000107 mm over 500 come from an error of 1e-3; half of the last printed digit is
   * 2.5e-11.
   */
  @Test
  void squareness_ofALargeTaper_usesTheTangent() {
    assertEquals(1e-3, cuts(27.0000107, 25, 500, 0).squareness().error(), 2.5e-11);
  }

  /** REF-FIV-04: a standard uncertainty of 0.02 mm; a band is sqrt 3 of that (REF-TOL-04). */
  @Test
  void uncertainty_followsTheCaliper() {
    Squareness found = cuts(25.4, 25.1, 500, 0.02 * Math.sqrt(3)).squareness();
    assertEquals(1.4142e-5, found.uncertainty(), 1e-9);
    assertEquals(0.0085, Adjustment.of(found, Hand.LEFT, 600).uncertainty(), 5e-5);
  }

  @Test
  void reading_ofSeveral_addsTheirScatter() {
    Reading reading = new Reading(List.of(25.0, 25.1, 25.2), 0);
    assertEquals(25.1, reading.mean(), 1e-12);
    assertEquals(0.1 / Math.sqrt(3), reading.uncertainty(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new Reading(List.of(), 0));
    assertThrows(IllegalArgumentException.class, () -> Reading.of(-1, 0));
    assertThrows(IllegalArgumentException.class, () -> Reading.of(1, -0.1));
  }

  static List<Arguments> conventions() {
    List<Arguments> all = new ArrayList<>();
    for (Hand pivot : Hand.values()) {
      for (Hand stays : Hand.values()) {
        for (StripEnd a : StripEnd.values()) {
          all.add(Arguments.of(pivot, stays, a));
        }
      }
    }
    return all;
  }

  /** Cut, measure, follow the advice, cut again: nothing is left to correct. */
  @ParameterizedTest
  @MethodSource("conventions")
  void advice_followed_removesTheError(Hand pivot, Hand stays, StripEnd aEnd) {
    long seed = 20260703 + pivot.ordinal() * 4 + stays.ordinal() * 2 + aEnd.ordinal();
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double distance = 300 + 500 * random.nextDouble();
      double off = 2 * random.nextDouble() - 1;
      SimulatedSled sled = new SimulatedSled(pivot, distance, off);
      double before = sled.angle();
      Squareness found = measured(sled, stays, aEnd).squareness();
      assertEquals(before, found.error(), 1e-11, "seed " + seed + " round " + i);
      sled.moveScrew(Adjustment.of(found, pivot, distance).move());
      // The simulated screw moves straight, not on its circle: what that leaves is 3/8 of the cube.
      assertEquals(
          0,
          sled.angle(),
          Math.pow(Math.abs(before), 3) / 2 + 1e-12,
          "seed " + seed + " round " + i);
      FiveCuts after = measured(sled, stays, aEnd);
      assertEquals(after.a().mean(), after.b().mean(), 2e-5, "seed " + seed + " round " + i);
    }
  }

  private static FiveCuts measured(SimulatedSled sled, Hand stays, StripEnd aEnd) {
    SimulatedSled.Strip strip = sled.fiveCuts(stays, 500);
    double a = aEnd == StripEnd.NEAR ? strip.near() : strip.far();
    double b = aEnd == StripEnd.NEAR ? strip.far() : strip.near();
    return new FiveCuts(stays, aEnd, Reading.of(a, 0), Reading.of(b, 0), strip.length());
  }

  /** With a caliper that is off, an error below its noise is called noise, a large one is not. */
  @Test
  void noise_isWhatTheCaliperCannotTell() {
    assertTrue(cuts(25.40, 25.39, 500, 0.02).squareness().isNoise());
    assertFalse(cuts(25.40, 25.10, 500, 0.02).squareness().isNoise());
  }

  /** About 95 of 100 true errors lie within twice the standard uncertainty (REF-TOL-04). */
  @Test
  void band_holdsTheTrueErrorAboutAsOftenAsItSays() {
    long seed = 77;
    Random random = new Random(seed);
    int inside = 0;
    int rounds = 4000;
    for (int i = 0; i < rounds; i++) {
      SimulatedSled sled = new SimulatedSled(Hand.LEFT, 600, 0.4);
      SimulatedSled.Strip strip = sled.fiveCuts(Hand.LEFT, 500);
      double a = strip.near() + 0.05 * (2 * random.nextDouble() - 1);
      double b = strip.far() + 0.05 * (2 * random.nextDouble() - 1);
      Squareness found = cuts(a, b, strip.length(), 0.05).squareness();
      if (Math.abs(found.error() - sled.angle()) <= 2 * found.uncertainty()) {
        inside++;
      }
    }
    double share = inside / (double) rounds;
    // Two equal rectangular errors make a triangular one: 1 - (1 - 2 sqrt(2/3) / 2)^2 = 0.966.
    assertEquals(0.966, share, 0.015, "seed " + seed);
  }
}
