package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.solid.Box;
import sawstead.station.Station;

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

  @Test
  void insert_inARoom_isKeptWithinTheWalls() {
    for (double wall : new double[] {500, 800, 1200}) {
      String room = "room: {left: %.0f, right: 1500, front: 1500, rear: 2500}\n".formatted(wall);
      Station station =
          SledBriefs.station(SledBriefs.SAW + room + "inserts:\n  - {id: a}\n  - {id: b}\n");
      Box a = station.part("a/plate").orElseThrow().body().box();
      Box b = station.part("b/plate").orElseThrow().body().box();
      for (Box box : List.of(a, b)) {
        assertTrue(box.low().x() >= -wall && box.high().x() <= 1500, wall + ": " + box);
        assertTrue(box.low().y() >= -1500 && box.high().y() <= 2500, wall + ": " + box);
      }
      assertFalse(a.overlaps(b, 0));
    }
  }
}
