package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sawstead.measure.Unit;

class StepsTest {
  @ParameterizedTest
  @CsvSource({
    "38, INCH, true, 38-1/16",
    "38, INCH, false, 37-15/16",
    "13 \u00b1 1/32, INCH, true, 13-1/16 \u00b1 1/32",
    "12-31/32, INCH, true, 13",
    "470, MM, true, 471",
    "470.4, MM, false, 470",
    "-5-1/2, INCH, true, -5-7/16"
  })
  void next_goesToTheNextMarkOfTheRule(String text, Unit unit, boolean up, String expected) {
    assertEquals(expected, Steps.next(text, unit, up).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown", "0.5 mm", "", "1/0"})
  void next_ofWhatIsNoPlainLength_isNothing(String text) {
    assertTrue(Steps.next(text, Unit.INCH, true).isEmpty());
  }
}
