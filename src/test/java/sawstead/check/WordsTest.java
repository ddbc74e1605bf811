package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.measure.Unit;
import sawstead.solid.Vec;

class WordsTest {
  /** REF-NUM-02: 600 mm is 23-5/8 in and 0.075 mm less; 0.3 / 25.4 = 0.0118, 2 / 25.4 = 0.0787. */
  @ParameterizedTest
  @CsvSource({
    "12.7, 1/2 in",
    "600, ~23-5/8 in",
    "0.3, 0.012 in",
    "-2, -0.079 in",
    "965.2, 38 in",
    "0, 0 in"
  })
  void length_inInches(double millimetres, String text) {
    assertEquals(text, new Words(Unit.INCH).length(millimetres));
  }

  @ParameterizedTest
  @CsvSource({"12.7, 12.7 mm", "0, 0 mm", "554.6, 554.6 mm"})
  void length_inMillimetres(double millimetres, String text) {
    assertEquals(text, new Words(Unit.MM).length(millimetres));
  }

  @Test
  void mass_isInPoundsWhereLengthsAreInInches() {
    // 1 lb = 0.45359237 kg.
    assertEquals("100 lb", new Words(Unit.INCH).mass(45.359237));
    assertEquals("45.4 kg", new Words(Unit.MM).mass(45.359237));
  }

  @Test
  void place_isAsNearAsATapeFindsIt() {
    Vec at = new Vec(12.6, -0.2, 304.8);
    assertEquals("x 13 mm, y 0 mm, z 305 mm", new Words(Unit.MM).place(at));
    assertEquals("x 1/2 in, y 0 in, z 12 in", new Words(Unit.INCH).place(at));
  }

  @Test
  void some_ofMany_namesThreeAndCountsTheRest() {
    assertEquals("a, b, c, d", Words.some(List.of("a", "b", "c", "d")));
    assertEquals("a, b, c and 2 more", Words.some(List.of("a", "b", "c", "d", "e")));
  }
}
