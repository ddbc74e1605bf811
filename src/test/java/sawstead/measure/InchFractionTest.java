package sawstead.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchFractionTest {

  @ParameterizedTest
  @CsvSource({
    // REF-NUM-02, every row
    "18,23/32,-0.25625",
    "17.7,11/16,0.2375",
    "600,23-5/8,-0.075",
    "25,31/32,0.39375",
    "12.7,1/2,0",
    "19.05,3/4,0"
  })
  void nearest_isTheMarkAndWhatIsLeft(double length, String mark, double residual) {
    InchFraction fraction = InchFraction.nearest(length, 32);
    assertEquals(mark, fraction.text());
    // The table lists mark - length (18 -> 23/32 is +0.25625 too long); ours is length - mark.
    assertEquals(residual, fraction.residual(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"0.396875,0", "1.190625,1/16", "-0.396875,0", "-1.190625,-1/16", "1.984375,1/16"})
  void nearest_ofATie_goesToTheEvenMark(double length, String mark) {
    // REF-NUM-03; the last row, 5/64, by the same rule
    assertEquals(mark, InchFraction.nearest(length, 32).text());
  }

  @ParameterizedTest
  @CsvSource({"469.9,18-1/2", "-139.7,-5-1/2", "0,0", "25.4,1", "-25.4,-1", "25.3,1", "19.8,25/32"})
  void text_isAProperFractionInLowestTerms(double length, String mark) {
    assertEquals(mark, InchFraction.nearest(length, 32).text());
  }

  @Test
  void residual_isAtMostHalfADivision_andRestoresTheLength() {
    long seed = 20260103L;
    Random random = new Random(seed);
    for (int round = 0; round < 20_000; round++) {
      double length = (random.nextDouble() - 0.5) * 6000;
      int finest = 1 << random.nextInt(8);
      InchFraction mark = InchFraction.nearest(length, finest);
      double inches = mark.whole() + (double) mark.numerator() / mark.denominator();
      double there = (mark.negative() ? -1 : 1) * inches * 25.4;
      assertEquals(length, there + mark.residual(), 1e-9, () -> "seed " + seed);
      assertTrue(Math.abs(mark.residual()) <= 25.4 / finest / 2 + 1e-12, () -> "seed " + seed);
    }
  }

  @Test
  void nearest_refusesWhatHasNoMark() {
    assertThrows(IllegalArgumentException.class, () -> InchFraction.nearest(Double.NaN, 32));
    assertThrows(IllegalArgumentException.class, () -> InchFraction.nearest(1e300, 32));
    assertThrows(IllegalArgumentException.class, () -> InchFraction.nearest(1, 0));
  }
}
