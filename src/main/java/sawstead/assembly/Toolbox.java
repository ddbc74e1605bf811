package sawstead.assembly;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.joinery.FastenerKind;
import sawstead.station.Station;

/**
 * The tools that may drive a fastener, those that people reach for first in front. All sizes are
 * common practice, no source; hands are in them.
 */
final class Toolbox {
  private static final Set<FastenerKind> SCREWS =
      EnumSet.of(FastenerKind.WOOD_SCREW, FastenerKind.HINGE_SCREW, FastenerKind.CASTER_SCREW);
  private static final Set<FastenerKind> ALL_SCREWS =
      EnumSet.of(
          FastenerKind.WOOD_SCREW,
          FastenerKind.HINGE_SCREW,
          FastenerKind.CASTER_SCREW,
          FastenerKind.POCKET_SCREW);

  private static final Tool DRILL = drill("drill", SCREWS, 60, 11);
  private static final Tool LONG_BIT = drill("drill with a 150 mm bit", ALL_SCREWS, 150, 9);
  private static final Tool SCREWDRIVER =
      new Tool(
          "screwdriver",
          true,
          ALL_SCREWS,
          List.of(new Tool.Barrel(0, 110, 8), new Tool.Barrel(110, 230, 85)),
          Optional.empty());
  private static final Tool RIGHT_ANGLE =
      new Tool(
          "right-angle driver",
          false,
          ALL_SCREWS,
          List.of(new Tool.Barrel(0, 25, 10), new Tool.Barrel(25, 85, 42)),
          Optional.of(new Tool.Grip(35, 85, 280, 50)));
  private static final Tool NAILER =
      new Tool(
          "brad nailer",
          true,
          EnumSet.of(FastenerKind.BRAD),
          List.of(new Tool.Barrel(0, 30, 18), new Tool.Barrel(30, 250, 75)),
          Optional.of(new Tool.Grip(15, 200, 230, 60)));
  private static final Tool WRENCH =
      new Tool(
          "socket wrench",
          true,
          EnumSet.of(FastenerKind.BOLT),
          List.of(new Tool.Barrel(0, 40, 24), new Tool.Barrel(40, 75, 36)),
          Optional.of(new Tool.Grip(40, 75, 180, 32)));

  private final List<Tool> tools;

  private Toolbox(List<Tool> tools) {
    this.tools = List.copyOf(tools);
  }

  static Toolbox of(Station station) {
    return new Toolbox(List.of(DRILL, LONG_BIT, SCREWDRIVER, RIGHT_ANGLE, NAILER, WRENCH));
  }

  /** Tools that drive that kind, owned ones first, else in the order in which one tries them. */
  List<Tool> tools(FastenerKind kind) {
    return tools.stream().filter(t -> t.drives().contains(kind)).toList();
  }

  private static Tool drill(String word, Set<FastenerKind> drives, double bit, double holder) {
    return new Tool(
        word,
        true,
        drives,
        List.of(
            new Tool.Barrel(0, bit, holder),
            new Tool.Barrel(bit, bit + 45, 42),
            new Tool.Barrel(bit + 45, bit + 165, 56)),
        Optional.of(new Tool.Grip(bit + 75, bit + 160, 210, 75)));
  }
}
