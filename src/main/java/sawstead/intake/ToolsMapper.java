package sawstead.intake;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.ClampStock;
import sawstead.brief.DriveTool;
import sawstead.brief.PocketJig;
import sawstead.brief.Power;
import sawstead.brief.Tools;

/** Reads the {@code tools} section, and refuses tools that contradict themselves. */
final class ToolsMapper {
  /** Stands in for a size that was refused, mm, so that the rest of the brief is read too. */
  private static final double SOME = 10;

  private final Section tools;

  ToolsMapper(Section tools) {
    this.tools = tools;
  }

  Tools tools() {
    Section drill = tools.section("drill");
    Section jig = tools.section("pocketJig");
    DriveTool drills = powered("drill");
    double longBit = drill.plain("longBit");
    if (longBit < drills.bit() && !drill.isBad("bit") && !drill.isBad("longBit")) {
      drill.problem(
          "longBit",
          "the long bit reaches "
              + words(longBit)
              + ", less than the short one, "
              + words(drills.bit()),
          "write at least " + words(drills.bit()) + "; the same length means that there is none");
    }
    return new Tools(
        drills,
        longBit,
        new PocketJig(jig.flag("owned"), jig.plain("length")),
        powered("nailer"),
        byHand("screwdriver", false),
        powered("rightAngle"),
        byHand("wrench", true),
        clamps());
  }

  private DriveTool powered(String key) {
    Section tool = tools.section(key);
    return tool(tool, tool.word("power", Power.class), tool.plain("grip"));
  }

  private DriveTool byHand(String key, boolean gripped) {
    Section tool = tools.section(key);
    return tool(tool, Power.HAND, gripped ? tool.plain("grip") : 0);
  }

  private DriveTool tool(Section tool, Power power, double grip) {
    DriveTool found =
        new DriveTool(
            tool.flag("owned"),
            power,
            size(tool.plain("bit")),
            size(tool.plain("body")),
            size(tool.plain("width")),
            Math.max(0, grip));
    if (grip > 0 && grip < found.width() / 2 && !tool.isBad("grip") && !tool.isBad("width")) {
      tool.problem(
          "grip",
          "the grip ends "
              + words(grip)
              + " from the bit, inside of a body that is "
              + words(found.width())
              + " wide",
          "measure from the bit's axis to the far end of grip and battery");
    }
    return found;
  }

  private static double size(double length) {
    return length > 0 ? length : SOME;
  }

  private List<ClampStock> clamps() {
    List<ClampStock> clamps = new ArrayList<>();
    for (Section clamp : tools.sections("clamps")) {
      clamps.add(
          new ClampStock(clamp.plain("opening"), clamp.plain("throat"), clamp.count("count")));
    }
    return clamps;
  }

  private String words(double length) {
    return tools.reading().inWords(length);
  }
}
