package sawstead.preview.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sawstead.measure.Unit;
import sawstead.preview.bench.Dial;

class RangeTest {
  private static Optional<Range> range(
      String text, Unit unit, Scale scale, String of, double min, double max) {
    return Range.of(new Field("a.b", "b", "", "", List.of(), scale, of, min, max), text, unit);
  }

  private static Optional<Range> length(String text, Unit unit, double min, double max) {
    return range(text, unit, Scale.LENGTH, "mm", min, max);
  }

  @Test
  void millimetres_halfToOneAndAHalf_inWholeOnes() {
    Range range = length("890", Unit.MM, 500, 1400).orElseThrow();
    assertEquals(500, range.low());
    assertEquals(1335, range.high());
    assertEquals("903", range.text(902.7));
  }

  @Test
  void inches_inSixteenths_bandAsWritten() {
    Range range = length("13 \u00b1 1/32", Unit.INCH, 100, 1200).orElseThrow();
    // 330.2 mm is 13 in, 25.4 mm to the inch (REF-NUM-01).
    assertEquals("13-1/16 \u00b1 1/32", range.text(330.2 + 1.5));
  }

  @Test
  void smallLengths_haveFinerMarks() {
    assertEquals("1.7", length("1.5", Unit.MM, 0, 20).orElseThrow().text(1.68));
    assertTrue(length("unknown", Unit.MM, 0, 20).isEmpty());
    assertTrue(length("3 mm", Unit.INCH, 0, 20).isEmpty());
  }

  @Test
  void masses_keepTheUnitThatIsWritten_andOnlyTheirOwnHasLimits() {
    Range kilograms = range("24 kg", Unit.MM, Scale.AMOUNT, "kg", 0, 30).orElseThrow();
    assertEquals(12, kilograms.low());
    assertEquals(30, kilograms.high());
    assertEquals("25.5 kg", kilograms.text(25.6));
    Range pounds = range("54 lb", Unit.INCH, Scale.AMOUNT, "kg", 0, 30).orElseThrow();
    assertEquals(81, pounds.high());
    assertEquals("60 lb", pounds.text(60.1));
  }

  @Test
  void whatACaliperMeasured_movesByHundredths() {
    Range range = length("107.10", Unit.MM, 0, 3000).orElseThrow();
    assertEquals(105.1, range.low(), 1e-9);
    assertEquals("107.24", range.text(107.237));
  }

  @Test
  void reaching_aPlaceBeyond_isLongerByIt() {
    Range range = length("890", Unit.MM, 500, 1400).orElseThrow();
    assertEquals(range, range.reaching(1000));
    assertEquals(1354, range.reaching(1350).high());
    assertEquals("1350", range.reaching(1350).text(1350));
  }

  @Test
  void dial_goesTwiceAsFar_butNeverToNothing() {
    Field depth = new Field("a.b", "b", "", "", List.of(), Scale.LENGTH, "mm", 0, 3000);
    Dial.Rule rule = (Dial.Rule) Range.dial(depth, "300", Unit.MM).orElseThrow();
    assertEquals(60, rule.low());
    assertEquals(600, rule.high());
    assertEquals("301", rule.text().apply(300.6));
  }

  @Test
  void counts_areWhole_andWithinWhatTheSchemaAccepts() {
    Range count = range("2", Unit.MM, Scale.COUNT, "", 1, 4).orElseThrow();
    assertEquals(1, count.low());
    assertEquals(4, count.high());
    assertEquals("3", count.text(2.6));
    assertTrue(range("two", Unit.MM, Scale.COUNT, "", 1, 4).isEmpty());
    assertTrue(range("1", Unit.MM, Scale.COUNT, "", 1, 1).isEmpty(), "no room to slide");
  }
}
