package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sawstead.measure.Unit;

class RangeTest {
  @Test
  void millimetres_halfToOneAndAHalf_inWholeOnes() {
    Range range = Range.of("890", Unit.MM, 500, 1400).orElseThrow();
    assertEquals(500, range.low());
    assertEquals(1335, range.high());
    assertEquals("903", range.text(902.7));
  }

  @Test
  void inches_inSixteenths_bandAsWritten() {
    Range range = Range.of("13 \u00b1 1/32", Unit.INCH, 100, 1200).orElseThrow();
    // 330.2 mm is 13 in, 25.4 mm to the inch (REF-NUM-01).
    assertEquals("13-1/16 \u00b1 1/32", range.text(330.2 + 1.5));
  }

  @Test
  void smallLengths_haveFinerMarks() {
    assertEquals("1.7", Range.of("1.5", Unit.MM, 0, 20).orElseThrow().text(1.68));
    assertTrue(Range.of("unknown", Unit.MM, 0, 20).isEmpty());
    assertTrue(Range.of("3 mm", Unit.INCH, 0, 20).isEmpty());
  }
}
