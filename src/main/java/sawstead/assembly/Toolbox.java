package sawstead.assembly;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.brief.DriveTool;
import sawstead.brief.Power;
import sawstead.brief.Tools;
import sawstead.joinery.FastenerKind;

/**
 * The tools of a brief as the room that they take up, those that people reach for first in front.
 * What the brief does not ask for - how thick a chuck or a bit holder is, where the hand holds, how
 * soon a cord bends - is common practice, no source.
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

  /** What bores the pockets. */
  static final String JIG = "pocket jig";

  private static final double CHUCK = 45;
  private static final double CHUCK_WIDTH = 42;

  /** Width of a hand round a grip, mm. */
  private static final double HAND = 75;

  private static final Tool.Tail CORD = new Tool.Tail(60, 20);
  private static final Tool.Tail HOSE = new Tool.Tail(100, 30);

  private final List<Tool> tools;

  private Toolbox(List<Tool> tools) {
    this.tools = List.copyOf(tools);
  }

  static Toolbox of(Tools owned) {
    List<Tool> tools = new ArrayList<>();
    tools.add(drill("drill", owned.drill(), SCREWS, owned.drill().bit(), 11));
    tools.add(drill("drill with a long bit", owned.drill(), ALL_SCREWS, owned.longBit(), 9));
    tools.add(tool("screwdriver", owned.screwdriver(), ALL_SCREWS, 8, 0, 1, 0));
    tools.add(tool("right-angle driver", owned.rightAngle(), ALL_SCREWS, 10, 0.15, 1, 50));
    tools.add(tool("brad nailer", owned.nailer(), EnumSet.of(FastenerKind.BRAD), 18, 0, 0.8, 60));
    tools.add(tool("socket wrench", owned.wrench(), EnumSet.of(FastenerKind.BOLT), 24, 0, 1, 32));
    return new Toolbox(tools);
  }

  /** Tools that drive that kind, owned ones first, else in the order in which one tries them. */
  List<Tool> tools(FastenerKind kind) {
    return tools.stream().filter(t -> t.drives().contains(kind)).toList();
  }

  private static Tool drill(
      String word, DriveTool size, Set<FastenerKind> drives, double bit, double holder) {
    double chuck = Math.min(CHUCK, size.body() / 3);
    double end = bit + size.body();
    return new Tool(
        word,
        size.owned(),
        drives,
        List.of(
            new Tool.Barrel(0, bit, holder),
            new Tool.Barrel(bit, bit + chuck, Math.min(CHUCK_WIDTH, size.width())),
            new Tool.Barrel(bit + chuck, end, size.width())),
        size.grip() == 0
            ? Optional.empty()
            : Optional.of(
                new Tool.Grip(bit + chuck + (size.body() - chuck) / 4, end - 5, size.grip(), HAND)),
        tail(size));
  }

  /**
   * A tool with one barrel behind its bit.
   *
   * @param from where the grip begins, as a part of the body's length
   * @param to where it ends
   */
  private static Tool tool(
      String word,
      DriveTool size,
      Set<FastenerKind> drives,
      double holder,
      double from,
      double to,
      double hand) {
    double bit = size.bit();
    return new Tool(
        word,
        size.owned(),
        drives,
        List.of(
            new Tool.Barrel(0, bit, holder), new Tool.Barrel(bit, bit + size.body(), size.width())),
        size.grip() == 0
            ? Optional.empty()
            : Optional.of(
                new Tool.Grip(bit + from * size.body(), bit + to * size.body(), size.grip(), hand)),
        tail(size));
  }

  private static Optional<Tool.Tail> tail(DriveTool size) {
    if (size.grip() == 0 || size.power() == Power.HAND || size.power() == Power.BATTERY) {
      return Optional.empty();
    }
    return Optional.of(size.power() == Power.CORD ? CORD : HOSE);
  }
}
