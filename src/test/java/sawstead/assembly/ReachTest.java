package sawstead.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sawstead.brief.Brief;
import sawstead.brief.Tools;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Station;

/**
 * A screw down through two shelves with other things around it. All thresholds are sums of sizes
 * written in the test's own brief.
 */
class ReachTest {
  private static final String ONLY_A_DRILL =
      "{drill: {bit: 40, longBit: 40, body: 120, width: 50, grip: 200, power: %s},"
          + " screwdriver: {owned: false}}";

  private static Brief brief(String tools) {
    String text =
        """
        name: Reach
        units: mm
        stock: [{name: ply, length: 2440, width: 1220, thickness: 18}]
        extras:
          - {id: any, stock: ply, outline: [[0,0],[9,0],[9,9],[0,9]], place: {at: [0,0,0]}}
        tools: %s
        """
            .formatted(tools);
    try {
      return BriefReader.read("reach", text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  private static Part box(
      String id, double x, double y, double z, double dx, double dy, double dz) {
    Body body = new Body(id, Solids.box(dx, dy, dz), Placement.at(new Vec(x, y, z)));
    return new Part(PartKind.PANEL, Optional.of("ply"), 1, body);
  }

  private static final Fastener SCREW =
      new Fastener(
          "high/screw-1",
          FastenerKind.WOOD_SCREW,
          List.of("high", "low"),
          new Vec(0, 0, 36),
          new Vec(0, 0, -1),
          32,
          4.17,
          2.4,
          7.9,
          true,
          "screw");

  /** The shelves reach 400 to every side; more things around the screw, at z 0 the low one. */
  private static Optional<ToolUse> use(Tools tools, Part... more) {
    Map<String, Part> parts = new TreeMap<>();
    parts.put("low", box("low", -400, -400, 0, 800, 800, 18));
    parts.put("high", box("high", -400, -400, 18, 800, 800, 18));
    for (Part part : more) {
      parts.put(part.id(), part);
    }
    Station station =
        new Station(
            brief("{}"),
            Optional.empty(),
            parts,
            Map.of(),
            List.of(SCREW),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            List.of(),
            List.of());
    Stage stage = new Stage(station, 0.05);
    BitSet all = stage.all();
    return new Reach(stage, Toolbox.of(tools)).use(0, all).filter(u -> u.tool().owned());
  }

  /** Bit 40 and body 120: 160 mm behind the head at z 36, so a lid at 196 ends exactly there. */
  @ParameterizedTest
  @CsvSource({"197, true", "195, false"})
  void bay_oneMillimetreHigherOrLower_flipsTheVerdict(double lid, boolean reached) {
    Tools tools = brief(ONLY_A_DRILL.formatted("battery")).tools();
    Part over = box("over", -100, -100, lid, 200, 200, 18);
    assertEquals(reached, use(tools, over).isPresent());
  }

  /**
   * A slot between two walls, one to each side: the hand round the grip is 75 mm wide, wider than
   * the body of 50, so a slot of 76 lets it in lengthwise and one of 74 does not.
   */
  @ParameterizedTest
  @CsvSource({"76, true", "74, false"})
  void bay_oneMillimetreWiderOrNarrower_flipsTheVerdict(double wide, boolean reached) {
    Tools tools = brief(ONLY_A_DRILL.formatted("battery")).tools();
    Part left = box("left", -wide / 2 - 18, -400, 36, 18, 800, 300);
    Part right = box("right", wide / 2, -400, 36, 18, 800, 300);
    Optional<ToolUse> use = use(tools, left, right);
    assertEquals(reached, use.isPresent());
    if (reached) {
      // The grip lies along the slot: at 90 degrees from x, or at 270.
      assertEquals(90, use.get().angle() % 180);
    }
  }

  /** The same slot closed at 230 mm from the axis: room for the grip of 200, not for its cord. */
  @ParameterizedTest
  @CsvSource({"battery, true", "cord, false"})
  void cord_needsAFreeAxisBehindTheGrip(String power, boolean reached) {
    Tools tools = brief(ONLY_A_DRILL.formatted(power)).tools();
    Part[] walls = {
      box("left", -56, -400, 36, 18, 800, 300),
      box("right", 38, -400, 36, 18, 800, 300),
      box("front", -38, -248, 36, 76, 18, 300),
      box("rear", -38, 230, 36, 76, 18, 300)
    };
    assertEquals(reached, use(tools, walls).isPresent());
  }

  /** A cord bends after 60 mm, a hose after 100 (common practice, no source). */
  @ParameterizedTest
  @CsvSource({"cord, 261, true", "cord, 259, false", "hose, 301, true", "hose, 299, false"})
  void tail_endsWhereItBends(String power, double free, boolean reached) {
    Tools tools = brief(ONLY_A_DRILL.formatted(power)).tools();
    Part[] walls = {
      box("left", -56, -400, 36, 18, 800, 300),
      box("right", 38, -400, 36, 18, 800, 300),
      box("front", -38, -free - 18, 36, 76, 18, 300),
      box("rear", -38, free, 36, 76, 18, 300)
    };
    assertEquals(reached, use(tools, walls).isPresent());
  }

  @Test
  void screwdriver_standsInForADrillThatIsNotOwned() {
    Tools tools = brief("{drill: {owned: false}}").tools();
    assertEquals("screwdriver", use(tools).orElseThrow().tool().word());
    assertTrue(use(brief("{}").tools()).orElseThrow().tool().word().equals("drill"));
  }

  @Test
  void instead_tellsTheRoomBehindTheHeadAndTheOtherSide() {
    Map<String, Part> parts = new TreeMap<>();
    parts.put("low", box("low", -400, -400, 400, 800, 800, 18));
    parts.put("high", box("high", -400, -400, 418, 800, 800, 18));
    parts.put("over", box("over", -400, -400, 436 + 47, 800, 800, 18));
    Fastener screw =
        new Fastener(
            "high/screw-1",
            FastenerKind.WOOD_SCREW,
            List.of("high", "low"),
            new Vec(0, 0, 436),
            new Vec(0, 0, -1),
            32,
            4.17,
            2.4,
            7.9,
            true,
            "screw");
    Station station =
        new Station(
            brief("{}"),
            Optional.empty(),
            parts,
            Map.of(),
            List.of(screw),
            List.of(),
            List.of(),
            List.of(),
            Map.of(),
            List.of(),
            List.of());
    Stage stage = new Stage(station, 0.05);
    Reach reach = new Reach(stage, Toolbox.of(brief("{}").tools()));
    assertFalse(reach.isReachable(0, stage.all(), true));
    Instead instead = Instead.of(stage, reach, 0, stage.all());
    // The lid's underside is 47 mm over the head, less the first millimetre of the bit holder.
    assertEquals(47, instead.free(), 0.1);
    assertTrue(instead.otherSide(), "from below, 400 mm over the floor");
  }
}
