package sawstead.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.assembly.BuildStep;
import sawstead.assembly.Driving;
import sawstead.brief.ClampStock;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Part;

/**
 * The user owns what the steps call for:
 *
 * <ul>
 *   <li>{@code tool-needed} (mind): only a tool reaches some fasteners that is not owned, pockets
 *       have no jig, or brads have neither a nailer nor two clamps that open wide enough;
 *   <li>{@code clamps-for-brads} (note): no nailer, but clamps that press the joints until the glue
 *       has set;
 *   <li>{@code jig-room} (mind): a board is too short to be held in the pocket jig.
 * </ul>
 *
 * <p>Conservative: a clamp is asked to span all that its step puts together, and to reach from the
 * nearest outside of that in to the brads.
 */
final class ToolCheck implements Check {
  /** Clamps that press a joint, one near each end (common practice, no source). */
  private static final int PAIR = 2;

  @Override
  public Outcome judge(Scene scene) {
    List<Finding> findings = new ArrayList<>();
    Map<String, List<Driving>> lacking = new TreeMap<>();
    List<Driving> brads = new ArrayList<>();
    List<Driving> pockets = new ArrayList<>();
    for (Driving driving : scene.plan().drivings()) {
      Optional<String> foreign =
          driving.use().map(u -> u.tool()).filter(t -> !t.owned()).map(t -> owner(t.word()));
      if (driving.fastener().kind() == FastenerKind.POCKET_SCREW) {
        pockets.add(driving);
      }
      if (foreign.isPresent() && driving.fastener().kind() == FastenerKind.BRAD) {
        brads.add(driving);
      } else {
        foreign.ifPresent(
            word -> lacking.computeIfAbsent(word, w -> new ArrayList<>()).add(driving));
      }
    }
    lacking.forEach((word, all) -> findings.add(lacking(word, all)));
    if (!brads.isEmpty()) {
      findings.add(clamped(scene, brads));
    }
    findings.addAll(pockets(scene, pockets));
    return Outcome.of(findings);
  }

  /** The tool that one would borrow: a long bit needs its drill. */
  private static String owner(String word) {
    int with = word.indexOf(" with ");
    return with < 0 ? word : word.substring(0, with);
  }

  private static Finding lacking(String word, List<Driving> all) {
    int others = all.stream().mapToInt(d -> d.instead().others()).min().orElse(0);
    String instead =
        all.stream().allMatch(d -> d.instead().otherSide())
            ? "drive them from the other side with what you have"
            : others > 0
                ? "leave these out where the "
                    + others
                    + " or more others of the same joints and glue suffice"
                : "choose another joint there (station: joint)";
    return Finding.mind(
        "tool-needed",
        ids(all),
        all.get(0).fastener().at(),
        Words.count(all.size(), "fastener", "fasteners")
            + " can only be driven with a "
            + word
            + ", which you do not have: "
            + Words.some(ids(all)),
        "borrow one, or " + instead);
  }

  private static Finding clamped(Scene scene, List<Driving> brads) {
    double span = brads.stream().mapToDouble(d -> span(scene, d)).max().orElse(0);
    List<ClampStock> clamps = scene.brief().tools().clamps();
    double deep = deep(scene, brads);
    int enough =
        clamps.stream()
            .filter(c -> c.opening() >= span && c.throat() >= deep)
            .mapToInt(ClampStock::count)
            .sum();
    String need = scene.words().length(span) + " and reach " + scene.words().length(deep) + " in";
    String what =
        Words.count(brads.size(), "brad wants", "brads want") + " a nailer, which you do not have";
    if (enough >= PAIR) {
      return Finding.general(
          Severity.NOTE,
          "clamps-for-brads",
          ids(brads),
          what,
          "leave them out and press each joint with two of your clamps that open "
              + need
              + " or more, until the glue has set");
    }
    double widest = clamps.stream().mapToDouble(ClampStock::opening).max().orElse(0);
    return Finding.mind(
        "tool-needed",
        ids(brads),
        brads.get(0).fastener().at(),
        what
            + "; without it two clamps have to open "
            + need
            + (clamps.isEmpty()
                ? ", and you have none"
                : ", and of yours "
                    + enough
                    + " do: the widest opens "
                    + scene.words().length(widest)),
        "borrow a nailer, or get two clamps that open " + need);
  }

  /** What a clamp spans along a brad: all panels that its step puts together, mm. */
  private static double span(Scene scene, Driving driving) {
    return extent(scene, driving, driving.fastener().axis()).map(e -> e[1] - e[0]).orElse(0.0);
  }

  /**
   * How far in a clamp's jaws have to press, so that in each joint two of its brads are under them,
   * mm.
   */
  private static double deep(Scene scene, List<Driving> brads) {
    Map<List<String>, List<Double>> joints = new LinkedHashMap<>();
    for (Driving driving : brads) {
      joints
          .computeIfAbsent(driving.fastener().joins(), j -> new ArrayList<>())
          .add(fromOutside(scene, driving));
    }
    return joints.values().stream()
        .mapToDouble(
            in -> in.stream().sorted().skip(Math.min(in.size(), PAIR) - 1L).findFirst().orElse(0.0))
        .max()
        .orElse(0);
  }

  /** From a brad across to the nearest outside of all that its step puts together, mm. */
  private static double fromOutside(Scene scene, Driving driving) {
    Fastener brad = driving.fastener();
    double least = Double.POSITIVE_INFINITY;
    for (Axis axis : Axis.values()) {
      if (Math.abs(brad.axis().dot(axis.unit())) < 0.5) {
        double at = brad.at().dot(axis.unit());
        double nearer =
            extent(scene, driving, axis.unit())
                .map(e -> Math.min(at - e[0], e[1] - at))
                .orElse(0.0);
        least = Math.min(least, nearer);
      }
    }
    return Math.max(0, least);
  }

  /** From where to where along a direction the panels reach that a brad's step puts together. */
  private static Optional<double[]> extent(Scene scene, Driving driving, Vec axis) {
    BuildStep step = scene.plan().steps().get(driving.step() - 1);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (String id : step.places()) {
      Optional<Part> part = scene.station().part(id).filter(p -> p.stock().isPresent());
      if (part.isPresent()) {
        Box box = part.get().body().box();
        Vec half = box.size().scale(0.5);
        double reach =
            Math.abs(half.x() * axis.x())
                + Math.abs(half.y() * axis.y())
                + Math.abs(half.z() * axis.z());
        double middle = box.centre().dot(axis);
        low = Math.min(low, middle - reach);
        high = Math.max(high, middle + reach);
      }
    }
    return low > high ? Optional.empty() : Optional.of(new double[] {low, high});
  }

  private static List<Finding> pockets(Scene scene, List<Driving> pockets) {
    if (pockets.isEmpty()) {
      return List.of();
    }
    if (!scene.brief().tools().pocketJig().owned()) {
      return List.of(
          Finding.mind(
              "tool-needed",
              ids(pockets),
              pockets.get(0).fastener().at(),
              Words.count(pockets.size(), "pocket wants", "pockets want")
                  + " a pocket jig and its bit, which you do not have",
              "borrow one, or write `joint: screw` where it says pocket"));
    }
    double length = scene.brief().tools().pocketJig().length();
    List<Driving> small = pockets.stream().filter(d -> run(scene, d) < length).toList();
    if (small.isEmpty()) {
      return List.of();
    }
    double least = small.stream().mapToDouble(d -> run(scene, d)).min().orElse(0);
    return List.of(
        Finding.mind(
            "jig-room",
            ids(small),
            small.get(0).fastener().at(),
            Words.count(small.size(), "pocket is", "pockets are")
                + " in a board of only "
                + scene.words().length(least)
                + ", and the jig holds none below "
                + scene.words().length(length),
            "bore these before you cut the board to its length, or write `joint: screw` there"));
  }

  /** Length of the bored board square to the edge that the pocket runs to, mm. */
  private static double run(Scene scene, Driving driving) {
    Fastener screw = driving.fastener();
    Vec size = scene.body(screw.joins().get(0)).orElseThrow().box().size();
    Vec axis = screw.axis();
    double x = Math.abs(axis.x());
    double y = Math.abs(axis.y());
    double z = Math.abs(axis.z());
    return x >= y && x >= z ? size.x() : y >= z ? size.y() : size.z();
  }

  private static List<String> ids(List<Driving> drivings) {
    return drivings.stream().map(d -> d.fastener().id()).toList();
  }
}
