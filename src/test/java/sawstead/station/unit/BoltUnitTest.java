package sawstead.station.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.joinery.FastenerKind;
import sawstead.station.Briefs;
import sawstead.station.DesignException;
import sawstead.station.Station;

class BoltUnitTest {
  private static Station bolted(String at) {
    String bolts = "  bolts: {diameter: 8, at: [[-200, 60], " + at + "]}\n";
    String saw = Briefs.SAW.replace("  bottom: closed\n", "  bottom: closed\n" + bolts);
    return Units.station(Briefs.of(saw + "station:\n  workingHeight: 900\n" + Briefs.BARE));
  }

  @Test
  void boltsOnTheTop_areBoredAndCounted() {
    Station station = bolted("[200, 60]");
    assertEquals(
        2, station.fasteners().stream().filter(f -> f.kind() == FastenerKind.BOLT).count());
  }

  @ParameterizedTest
  @CsvSource({"'[200, -40]'", "'[900, 60]'", "'[-480, 60]'", "'[200, 3000]'"})
  void boltBesideTheTop_isTold_withItsPlaceInTheBrief(String at) {
    DesignException told = assertThrows(DesignException.class, () -> bolted(at));
    assertEquals("saw.bolts.at[1]", told.path());
    assertTrue(told.getMessage().contains("no room on the stand's top"), told.getMessage());
  }
}
