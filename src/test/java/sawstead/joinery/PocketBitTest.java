package sawstead.joinery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PocketBitTest {
  /** REF-TRD-05. */
  @ParameterizedTest
  @CsvSource({"19.05, 35.548, 36.802", "18, 33.588, 34.773", "12, 22.392, 23.182"})
  void entryAndRun_forExitAtHalfThickness(double thickness, double entry, double run) {
    PocketBit bit = new PocketBit(thickness);
    assertEquals(entry, bit.entry(), 0.0005);
    assertEquals(run, bit.run(), 0.0005);
  }

  /** REF-TRD-05: a screw of 31.75 mm beyond a web of 10 mm. */
  @Test
  void intoAndAside_ofAScrewBeyondItsWeb() {
    assertEquals(21.009, PocketBit.into(31.75, 10), 0.0005);
    assertEquals(5.629, PocketBit.aside(31.75, 10), 0.0005);
  }

  @Test
  void web_isTheLeastThatKeepsTheTipCovered() {
    PocketBit bit = new PocketBit(18);
    assertEquals(10, bit.web(31.75, 72), 1e-12);
    double web = bit.web(31.75, 18);
    assertEquals(15, PocketBit.into(31.75, web), 1e-9);
    assertTrue(web < bit.greatestWeb());
  }
}
