package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SledCheckTest {

  private static Outcome ask(String sled) {
    return SledBriefs.ask(
        new SledCheck(),
        SledBriefs.SAW + SledBriefs.ALIGNED + "sleds:\n  - {id: cross, " + sled + "}\n");
  }

  private static List<String> grave(String sled) {
    return SledBriefs.grave(ask(sled));
  }

  @Test
  void sled_asDesigned_isFine() {
    assertEquals(List.of(), grave("widest: 150"));
  }

  @Test
  void runner_widerOrNarrowerThanItsSlot_isTold() {
    assertEquals(
        List.of("stop runner-tight", "stop runner-tight"),
        grave("widest: 150, runnerWidth: 19.06"));
    assertEquals(
        List.of("mind runner-loose", "mind runner-loose"), grave("widest: 150, runnerWidth: 18.5"));
    assertEquals(
        List.of("mind runner-tight"), grave("widest: 150, runnerWidth: 18.98, runners: left"));
  }

  @Test
  void runner_higherThanItsSlot_bottoms() {
    assertTrue(grave("widest: 150, runnerSheet: ply-12").contains("stop runner-bottoms"));
  }

  @Test
  void guard_thatIsTooShort_isRefused() {
    assertEquals(List.of("stop exit-guard"), grave("widest: 150, guardLength: 30"));
  }

  @Test
  void sled_forWideBoards_tipsOffTheTable() {
    assertEquals(List.of("mind sled-balance"), grave("widest: 500"));
  }

  /** REF-TRD-08: half chord 111.933 at 12 mm above the table; thickest is 79 - 12 - 3. */
  @Test
  void cuts_areThoseOfTheHandbook() {
    Finding note =
        ask("widest: 150").findings().stream()
            .filter(f -> f.rule().equals("sled-cuts"))
            .findFirst()
            .orElseThrow();
    assertTrue(note.says().contains("150 mm wide, 64 mm thick"), note.says());
    assertTrue(note.says().contains("the base is 223.87 mm"), note.says());
  }
}
