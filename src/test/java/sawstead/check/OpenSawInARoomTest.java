package sawstead.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sawstead.intake.BriefReader;
import sawstead.solid.Box;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** What a saw with an open bottom and a small room ask of the design, on saws that nobody made. */
class OpenSawInARoomTest {

  private static Station station(Random random, double leftWall) throws Exception {
    double left = 230 + 90 * random.nextDouble();
    double right = 230 + 90 * random.nextDouble();
    String text =
        String.format(
            Locale.ROOT,
            """
            name: open saw
            units: mm
            saw:
              table: {width: 702, depth: 545, height: 318}
              body: {left: %.1f, right: %.1f, front: 40, rear: 470}
              feet: {left: %.1f, right: %.1f, front: 55, rear: %.1f}
              bottom: open
              blade: {leftEdge: 340, arbor: 262}
              slots: [{at: -140, width: 18, depth: 8}, {at: 135, width: 18, depth: 8}]
              fence: {kind: sliding, right: 350, left: 220}
              dust: {side: rear, x: 10, below: 170, diameter: 58}
            stock: [{name: ply, length: 2500, width: 1250, thickness: %.2f}]
            vac: none
            casters: {height: 88}
            station: {workingHeight: 905}
            sleds: [{id: crosscut, kind: crosscut}]
            room: {left: %.1f, right: 1700, front: 2600, rear: 3200}
            """,
            left + 10,
            right + 10,
            left,
            right,
            410 + 60 * random.nextDouble(),
            17 + 2.5 * random.nextDouble(),
            leftWall);
    return Units.station(BriefReader.read("open.yaml", text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void tray_leavesRoomForTheNuts() throws Exception {
    long seed = 20261126;
    Random random = new Random(seed);
    for (int i = 0; i < 12; i++) {
      Station station = station(random, 2500);
      List<String> bad =
          Inspector.inspect(station).findings().stream()
              .filter(f -> List.of("bolt-blocked", "screw-meets-body").contains(f.rule()))
              .map(Finding::says)
              .toList();
      assertEquals(List.of(), bad, "seed " + seed + ", saw " + i);
      assertTrue(station.parts().containsKey("tray/floor"));
    }
  }

  @Test
  void sled_isKeptWithinTheWalls() throws Exception {
    long seed = 20261127;
    Random random = new Random(seed);
    int elsewhere = 0;
    for (int i = 0; i < 8; i++) {
      double leftWall = 1400 + 1600 * random.nextDouble();
      Station station = station(random, leftWall);
      Box base = station.part("crosscut/base").orElseThrow().body().box();
      assertTrue(base.low().x() >= -leftWall, "seed " + seed + ", saw " + i);
      assertTrue(base.high().x() <= 1700, "seed " + seed + ", saw " + i);
      elsewhere += base.low().x() > 0 || base.low().y() > 500 ? 1 : 0;
      List<String> clashes =
          Inspector.inspect(station).findings().stream()
              .filter(f -> List.of("clash", "motion-blocked").contains(f.rule()))
              .map(Finding::says)
              .toList();
      assertEquals(List.of(), clashes, "seed " + seed + ", saw " + i);
    }
    assertTrue(elsewhere > 0, "some wall was too near for the left side");
  }
}
