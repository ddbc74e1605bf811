package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class InsertCheckTest {

  private static List<String> grave(String insert, String throat) {
    String saw =
        SledBriefs.SAW.replace("  slots:", "  throat: {length: 350, " + throat + "}\n  slots:");
    return SledBriefs.grave(
        SledBriefs.ask(new InsertCheck(), saw + "inserts:\n  - {id: zero" + insert + "}\n"));
  }

  @Test
  void insert_asDesigned_letsTheKnifePass() {
    for (String shape : List.of("straight", "round", "tapered")) {
      assertEquals(List.of(), grave("", "ledge: 3, shape: " + shape));
    }
  }

  @Test
  void insert_withoutASlot_blocksTheKnife() {
    assertEquals(List.of("stop insert-knife"), grave(", knifeSlot: false", "ledge: 3"));
  }

  @Test
  void insert_onAThinLedge_orLowInADeepOne_isTold() {
    assertEquals(List.of("mind insert-rim"), grave("", "ledge: 1.5"));
    assertEquals(List.of("mind insert-low"), grave("", "ledge: 14"));
  }
}
