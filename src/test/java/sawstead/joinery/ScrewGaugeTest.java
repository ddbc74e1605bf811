package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScrewGaugeTest {
  /** REF-FAS-11: millimetres of GTR-282 Table 8-9. */
  @ParameterizedTest
  @CsvSource({
    "4, 2.84",
    "5, 3.18",
    "6, 3.51",
    "7, 3.84",
    "8, 4.17",
    "9, 4.50",
    "10, 4.83",
    "12, 5.49",
    "14, 6.15"
  })
  void shank_byNumber(int number, double mm) {
    assertEquals(mm, new ScrewGauge(number).shank(), 0.005 + 1e-9);
  }

  /** REF-FAS-12: NDS 2018 Table L3, inches. */
  @ParameterizedTest
  @CsvSource({
    "6, 0.113, 0.262",
    "7, 0.122, 0.287",
    "8, 0.131, 0.312",
    "9, 0.142, 0.337",
    "10, 0.152, 0.363",
    "12, 0.171, 0.414",
    "14, 0.196, 0.480"
  })
  void rootAndHead_byNumber(int number, double root, double head) {
    assertEquals(root * 25.4, new ScrewGauge(number).root(), 1e-9);
    assertEquals(head * 25.4, new ScrewGauge(number).head(), 1e-9);
  }

  /** REF-TRD-06, inches. */
  @ParameterizedTest
  @CsvSource({
    "4, 0.0625, 0.078125",
    "6, 0.078125, 0.09375",
    "8, 0.09375, 0.109375",
    "10, 0.109375, 0.125",
    "12, 0.125, 0.140625"
  })
  void pilot_byNumber(int number, double soft, double hard) {
    assertEquals(soft * 25.4, new ScrewGauge(number).pilot(Wood.SOFT), 1e-9);
    assertEquals(hard * 25.4, new ScrewGauge(number).pilot(Wood.HARD), 1e-9);
  }

  /** REF-TRD-06: 7/64 in for number 8 in the edge of plywood. */
  @Test
  void pilot_inTheEdgeOfPlywood() {
    assertEquals(7 / 64.0 * 25.4, new ScrewGauge(8).pilot(Wood.PLY_EDGE), 1e-9);
  }

  /**
   * REF-FAS-02: 70 % of the root in soft, 90 % in hard wood; a drill is within 0.1 mm of the band.
   */
  @ParameterizedTest
  @ValueSource(ints = {6, 7, 8, 9, 10, 12, 14})
  void pilot_liesInTheHandbooksBand(int number) {
    ScrewGauge gauge = new ScrewGauge(number);
    for (Wood wood : Wood.values()) {
      double pilot = gauge.pilot(wood);
      assertTrue(
          pilot >= 0.7 * gauge.root() - 0.1 && pilot <= 0.9 * gauge.root() + 0.1,
          () -> "#" + number + " " + wood + " " + pilot);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 3, 11, 13, 16})
  void of_refusesNumbersThatAreNotMade(int number) {
    assertThrows(JoineryException.class, () -> new ScrewGauge(number));
  }
}
