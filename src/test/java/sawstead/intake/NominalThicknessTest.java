package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.measure.Unit;

class NominalThicknessTest {

  @ParameterizedTest
  @CsvSource({
    // REF-PLY-04, category table (PS 1, unsanded): category, min in, max in
    "1/4,0.219,0.281",
    "3/8,0.344,0.406",
    "15/32,0.438,0.500",
    "1/2,0.469,0.531",
    "5/8,0.594,0.656",
    "23/32,0.688,0.750",
    "3/4,0.719,0.781",
    "1,0.950,1.050"
  })
  void of_inchCategories_isTheBandOfPs1(String category, double least, double most) {
    NominalThickness band = NominalThickness.of(category, Unit.INCH).orElseThrow();
    // The table is rounded to a thousandth of an inch.
    assertEquals(least, (band.nominal() - band.minus()) / 25.4, 0.0005 + 1e-9);
    assertEquals(most, (band.nominal() + band.plus()) / 25.4, 0.0005 + 1e-9);
  }

  @Test
  void of_18mm_isTheBandOfEn315() {
    // REF-PLY-06
    NominalThickness band = NominalThickness.of("18 mm", Unit.INCH).orElseThrow();
    assertEquals(17.06, band.nominal() - band.minus(), 1e-9);
    assertEquals(18.74, band.nominal() + band.plus(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // REF-PLY-09, birch mill data: nominal mm, mean
    "6.5,6.4",
    "9,9.2",
    "12,12",
    "15,14.9",
    "18,17.7",
    "21,20.5",
    "24,23.4",
    "30,29.4"
  })
  void of_millimetres_holdsTheMeanOfAMill(String nominal, double mean) {
    NominalThickness band = NominalThickness.of(nominal, Unit.MM).orElseThrow();
    assertTrue(mean >= band.nominal() - band.minus() && mean <= band.nominal() + band.plus());
  }

  @Test
  void of_aBareFraction_isInchesInEveryFile() {
    assertEquals(NominalThickness.of("3/4", Unit.INCH), NominalThickness.of("3/4", Unit.MM));
    assertEquals(19.05, NominalThickness.of("3/4", Unit.MM).orElseThrow().nominal(), 1e-12);
  }

  @Test
  void of_whatIsNoThickness_isEmpty() {
    assertEquals(Optional.empty(), NominalThickness.of("furniture board", Unit.MM));
    assertEquals(Optional.empty(), NominalThickness.of("600", Unit.MM));
  }
}
