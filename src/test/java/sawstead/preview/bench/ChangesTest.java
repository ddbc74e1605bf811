package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.preview.scene.Demo;
import sawstead.station.Station;

class ChangesTest {
  private final Station before = Demo.station("lantern-alley");

  @Test
  void between_theSame_isNothing() {
    assertEquals(List.of(), Changes.between(before, before));
  }

  @Test
  void between_twoHeights_tellsTheHeightAndTheLegs() {
    String text = Demo.text("lantern-alley").replace("workingHeight: 38", "workingHeight: 37");
    Station after = Bench.design("x", text).station().orElseThrow();
    List<String> changes = Changes.between(before, after);
    assertTrue(changes.contains("working height 38 \u2192 37 in"), changes.toString());
    // 38 in less 4 casters, 18.2 mm base, 18.2 mm top and 13 saw leaves a leg of 497 mm.
    assertTrue(
        changes.stream().anyMatch(c -> c.contains("leg-1-face") && c.contains("length 19-9/16")),
        changes.toString());
  }
}
