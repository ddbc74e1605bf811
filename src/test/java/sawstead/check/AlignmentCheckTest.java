package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class AlignmentCheckTest {

  private static Outcome ask(String alignment) {
    return SledBriefs.ask(new AlignmentCheck(), SledBriefs.SAW + alignment + SledBriefs.SLED);
  }

  @Test
  void blade_thatIsParallel_isFine() {
    assertEquals(List.of(), SledBriefs.grave(ask(SledBriefs.ALIGNED)));
  }

  @Test
  void blade_thatNobodyMeasured_comesFirst() {
    assertEquals(List.of("mind alignment-unknown"), SledBriefs.grave(ask("")));
  }

  /** Slot 1 is on the left; the rear is farther from it, so it goes to the left. */
  @Test
  void blade_thatHeels_isAlignedBeforeAnySled() {
    Outcome found = ask("alignment: {front: 120.00, rear: 120.15}\n");
    assertEquals(List.of("stop alignment-off"), SledBriefs.grave(found));
    Finding stop = found.findings().get(0);
    assertTrue(stop.says().contains("0.15 mm farther from slot 1"), stop.says());
    assertTrue(stop.remedy().contains("0.15 mm to the left"), stop.remedy());
    Finding right = ask("alignment: {slot: 2, front: 120.00, rear: 120.15}\n").findings().get(0);
    assertTrue(right.remedy().contains("to the right"), right.remedy());
    Finding nearer = ask("alignment: {front: 120.15, rear: 120.00}\n").findings().get(0);
    assertTrue(nearer.remedy().contains("to the right"), nearer.remedy());
  }

  @Test
  void slot_thatIsUneven_isTold() {
    assertEquals(
        List.of("mind slot-uneven"),
        SledBriefs.grave(ask("alignment: {front: 120, rear: 120, widths: [[19, 19.3, 19]]}\n")));
  }
}
