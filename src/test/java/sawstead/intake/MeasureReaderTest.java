package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.brief.Saw;
import sawstead.measure.Measured;
import sawstead.measure.Measured.Origin;

/** The rules of bands (common practice, no source; their figures stand in the schema). */
class MeasureReaderTest {

  private static Saw saw(String was, String is) {
    return Briefs.least(was, is).saw().orElseThrow();
  }

  @Test
  void value_givenWithoutABand_hasThatOfTheTape() {
    assertEquals(
        new Measured("saw.blade.arbor", 230, 0.5, 0.5, Origin.MEASURED),
        saw("name: Least", "name: Least").blade().arbor());
  }

  @Test
  void value_givenWithABand_hasIt() {
    assertEquals(
        new Measured("saw.blade.arbor", 230, 2, 1, Origin.BANDED),
        saw("arbor: 230", "arbor: 230 +1/-2").blade().arbor());
  }

  @Test
  void value_leftOut_isTheDefault() {
    assertEquals(
        new Measured("saw.blade.diameter", 254, 2, 2, Origin.DEFAULT),
        saw("name: Least", "name: Least").blade().diameter());
  }

  @Test
  void value_unknown_isTheDefaultWithAWideBand() {
    assertEquals(
        new Measured("saw.blade.diameter", 254, 8, 8, Origin.UNKNOWN),
        saw("arbor: 230", "arbor: 230, diameter: unknown").blade().diameter());
  }

  @Test
  void value_inAnUnknownSection_isUnknownToo() {
    Saw saw = Briefs.withSaw("throat: unknown").saw().orElseThrow();
    assertEquals(Origin.UNKNOWN, saw.throat().ledge().origin());
    assertEquals(4, saw.throat().ledge().plus());
  }

  @Test
  void value_ofADefault_neverReachesBelowItsRange() {
    Measured rise = saw("name: Least", "name: Least").feet().rise();
    assertEquals(new Measured("saw.feet.rise", 0, 0, 5, Origin.DEFAULT), rise);
  }

  @Test
  void value_ofAMass_hasABandOfFivePercent() {
    Measured mass = Briefs.withSaw("mass: 40").saw().orElseThrow().mass();
    assertEquals(new Measured("saw.mass", 40, 2, 2, Origin.MEASURED), mass);
  }

  @Test
  void value_ofAWish_isExact() {
    Measured height =
        Briefs.with("station: {workingHeight: 900}")
            .station()
            .orElseThrow()
            .workingHeight()
            .orElseThrow();
    assertEquals(Measured.of("station.workingHeight", 900), height);
  }

  @Test
  void value_outOfRangeInInches_namesALimitThatIsAccepted() {
    String yaml =
        Briefs.LEAST
            .replace("units: mm", "units: inch")
            .replaceAll("(?<=[ {])(\\d+(?:\\.\\d+)?)(?=[,}])", "$1 mm");
    List<BriefProblem> problems = Briefs.problems(yaml + "station: {workingHeight: 90}\n");
    assertEquals("write at most 55-1/16 in", problems.get(0).remedy());
    assertTrue(Briefs.problems(yaml + "station: {workingHeight: 55-1/16}\n").isEmpty());
  }
}
