package sawstead.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "18, 18",
    "12.700000000000003, 12.7",
    "946.1187500000001, 946.11875",
    "6.123233995736766E-17, 0",
    "-1.0000000000000002, -1",
    "2.4E7, 24000000",
    "0.7071067811865476, 0.7071067811865476",
    "3.141592653589793, 3.141592653589793",
    "5832000.000000001, 5832000",
  })
  void of_value_isWrittenInFullButWithoutNoise(double value, String written) {
    assertEquals(written, Numbers.of(value).toPlainString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void of_whatIsNotFinite_isRefused(double value) {
    assertThrows(IllegalArgumentException.class, () -> Numbers.of(value));
  }

  @Test
  void of_anyValue_isOffByNoMoreThanRounding() {
    long seed = 41L;
    Random random = new Random(seed);
    for (int i = 0; i < 20000; i++) {
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(16) - 6);
      double back = Numbers.of(value).doubleValue();
      assertTrue(
          Math.abs(back - value) <= Math.max(1e-12, 1e-14 * Math.abs(value)),
          "seed " + seed + ", case " + i + ": " + value + " became " + back);
    }
  }
}
