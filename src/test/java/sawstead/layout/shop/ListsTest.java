package sawstead.layout.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import sawstead.joinery.Board;
import sawstead.joinery.FastenerKind;
import sawstead.station.Briefs;
import sawstead.station.Station;

/** {@link CutList}, {@link HardwareList} and {@link CostList} count what is in the station. */
class ListsTest {

  @TestFactory
  Stream<DynamicTest> lists_ofDemos_countEveryThing() {
    return Briefs.demos().stream()
        .map(file -> dynamicTest(file.toString(), () -> counted(Breakdowns.demo(file).station())));
  }

  private static void counted(Station station) {
    List<CutListLine> lines = CutList.of(station);
    assertEquals(
        station.boards().keySet().stream().sorted().toList(),
        lines.stream().flatMap(line -> line.parts().stream()).sorted().toList());
    double mass = lines.stream().mapToDouble(line -> line.mass() * line.parts().size()).sum();
    double whole = station.boards().values().stream().mapToDouble(Board::mass).sum();
    assertEquals(whole, mass, 0.001 * station.boards().size());
    assertEquals(whole, CutList.masses(station).values().stream().mapToDouble(d -> d).sum(), 1e-9);
    List<HardwareLine> hardware = HardwareList.of(station);
    int screws =
        hardware.stream()
            .filter(line -> line.item().contains("screw") || line.item().startsWith("brad"))
            .mapToInt(HardwareLine::needed)
            .sum();
    assertEquals(
        station.fasteners().stream().filter(f -> f.kind() != FastenerKind.BOLT).count(), screws);
    hardware.forEach(line -> assertTrue(line.take() >= line.needed(), line.item()));
  }

  @Test
  void hardware_ofJigsAndDrawers_isBoughtToo() {
    List<String> items =
        HardwareList.of(Breakdowns.demo("chandler-row").station()).stream()
            .map(HardwareLine::item)
            .toList();
    for (String item :
        List.of(
            "pair of drawer slides, 12.7 mm thick",
            "router plate 298 mm x 235 mm, 9.5 mm thick",
            "washer for the paddle's pivots")) {
      assertTrue(items.stream().anyMatch(i -> i.startsWith(item)), item + " in " + items);
    }
    List<String> jigs =
        HardwareList.of(Breakdowns.demo("cooperage").station()).stream()
            .map(HardwareLine::item)
            .toList();
    assertTrue(jigs.contains("hold-down clamp with an upright handle"), jigs.toString());
    assertTrue(jigs.stream().anyMatch(i -> i.startsWith("track for a stop")), jigs.toString());
  }

  @Test
  void spares_areATenthRoundedUpToTen() {
    assertEquals(10, HardwareList.withSpares(1));
    assertEquals(20, HardwareList.withSpares(10));
    assertEquals(180, HardwareList.withSpares(158));
  }

  @Test
  void cost_withoutAPrice_isNotZero() throws Exception {
    assertEquals(OptionalDouble.empty(), CostList.sum(CostList.of(Breakdowns.demo("first-brief"))));
    assertEquals(
        "not known: no sheet has a `price`",
        CostList.words(CostList.of(Breakdowns.demo("first-brief"))));
    assertEquals(
        OptionalDouble.of(80), CostList.sum(CostList.of(Breakdowns.of(BreakdownTest.TWO))));
  }

  /**
   * A box without a lid, worked by hand: floor under four walls, two of them between the others.
   */
  @Test
  void bands_ofABox_areForTheEdgesThatShow() {
    Station station =
        sawstead.station.unit.Units.station(
            Briefs.of(
                """
            name: Box
            units: mm
            stock: [{name: ply, length: 2440, width: 1220, thickness: 18}]
            extras:
              - {id: floor, stock: ply, outline: [[0,0],[400,0],[400,300],[0,300]], place: {at: [0,0,0]}}
              - {id: front, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,18,18], turns: [{about: x, degrees: 90}]}}
              - {id: rear, stock: ply, outline: [[0,0],[400,0],[400,100],[0,100]], place: {at: [0,300,18], turns: [{about: x, degrees: 90}]}}
              - {id: left, stock: ply, outline: [[0,0],[264,0],[264,100],[0,100]], place: {at: [0,18,18], turns: [{about: x, degrees: 90}, {about: z, degrees: 90}]}}
            """));
    EdgeBands edges = new EdgeBands(station.boards().values());
    assertEquals("2 along, 2 across", edges.of(station.boards().get("floor")).words());
    // Its lower edge is on the floor; its ends show.
    assertEquals("1 along, 2 across", edges.of(station.boards().get("front")).words());
    assertEquals(400 + 2 * 100, edges.of(station.boards().get("front")).length(), 1e-9);
    // Between front and rear, on the floor.
    assertEquals("1 along", edges.of(station.boards().get("left")).words());
  }
}
