package sawstead.preview.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.preview.scene.Demo;

class BenchTest {
  @Test
  void design_ofADemo_hasAStationAndNoFlaw() {
    Snapshot snapshot = Bench.design("x", Demo.text("first-brief"));
    assertTrue(snapshot.station().isPresent());
    assertEquals(List.of(), snapshot.flaws());
    assertTrue(Bench.judge(snapshot).report().isPresent());
  }

  @Test
  void design_ofAMisspeltKey_namesTheLine() {
    String text = "name: x\nunits: mm\nsatock: []\n";
    Snapshot snapshot = Bench.design("x", text);
    assertTrue(snapshot.station().isEmpty());
    assertTrue(snapshot.flaws().stream().anyMatch(f -> f.line() == 3), snapshot.flaws().toString());
    assertEquals(snapshot, Bench.judge(snapshot));
  }

  @Test
  void design_ofNoYaml_isAFlaw() {
    assertEquals(1, Bench.design("x", "{[").flaws().size());
  }
}
