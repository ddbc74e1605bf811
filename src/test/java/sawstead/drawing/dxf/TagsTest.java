package sawstead.drawing.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TagsTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0.0",
    "-0.0, 0.0",
    "600, 600.0",
    "1e5, 100000.0",
    "1e-5, 0.00001",
    "1e-13, 0.0",
    "-12.7, -12.7",
    "0.41421356237309503, 0.414213562373",
  })
  void decimal_ofANumber_hasNoExponent(double value, String text) {
    assertEquals(text, Tags.decimal(value));
  }
}
