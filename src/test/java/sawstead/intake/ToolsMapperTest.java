package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.brief.ClampStock;
import sawstead.brief.DriveTool;
import sawstead.brief.Power;
import sawstead.brief.Tools;

class ToolsMapperTest {
  @Test
  void tools_leftOut_areUsualOnes() {
    Tools tools = Briefs.read(Briefs.LEAST).tools();
    assertEquals(new DriveTool(true, Power.BATTERY, 60, 165, 56, 210), tools.drill());
    assertFalse(tools.rightAngle().owned());
    assertEquals(Power.HOSE, tools.nailer().power());
    assertEquals(Power.HAND, tools.screwdriver().power());
    assertEquals(List.of(new ClampStock(600, 80, 4)), tools.clamps());
    assertTrue(tools.pocketJig().owned());
  }

  @Test
  void tools_ofTheUser_areTheirs() {
    Tools tools =
        Briefs.with(
                "tools:",
                "  drill: {bit: 2 in, power: cord}",
                "  rightAngle: {owned: true}",
                "  clamps: [{opening: 24 in}, {opening: 300, throat: 50, count: 1}]")
            .tools();
    // REF-NUM-01: 1 in = 25.4 mm
    assertEquals(new DriveTool(true, Power.CORD, 50.8, 165, 56, 210), tools.drill());
    assertTrue(tools.rightAngle().owned());
    assertEquals(List.of(new ClampStock(609.6, 80, 2), new ClampStock(300, 50, 1)), tools.clamps());
  }
}
