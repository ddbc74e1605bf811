package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.assembly.Driving;
import sawstead.assembly.Instead;
import sawstead.joinery.FastenerKind;
import sawstead.station.Part;

/**
 * Every fastener can be driven when its turn comes, one finding a unit:
 *
 * <ul>
 *   <li>{@code screw-unreachable} (stop): no tool's envelope is free of what stands at its step,
 *       and no other order was found in which it would be;
 *   <li>{@code bolt-nut} (mind): no wrench reaches the nut of a bolt.
 * </ul>
 *
 * Conservative: an envelope is a little larger than its tool, and a grip is tried every 15 degrees.
 */
final class ReachCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Map<String, List<Driving>> blocked = new TreeMap<>();
    List<Driving> nuts = new ArrayList<>();
    for (Driving driving : scene.plan().drivings()) {
      String first = driving.fastener().joins().get(0);
      String unit = scene.station().part(first).map(Part::unit).orElse(first);
      boolean bolt = driving.fastener().kind() == FastenerKind.BOLT;
      if (!driving.reachable() && bolt) {
        nuts.add(driving);
      } else if (!driving.reachable()) {
        blocked.computeIfAbsent(unit, u -> new ArrayList<>()).add(driving);
      }
    }
    List<Finding> findings = new ArrayList<>();
    if (!nuts.isEmpty()) {
      findings.add(nuts(nuts));
    }
    blocked.forEach((unit, all) -> findings.add(unreachable(scene.words(), unit, all)));
    return Outcome.of(findings);
  }

  private static Finding unreachable(Words words, String unit, List<Driving> blocked) {
    List<String> ids = ids(blocked);
    List<String> ways =
        blocked.stream().flatMap(d -> d.inTheWay().stream()).distinct().sorted().toList();
    return Finding.stop(
        "screw-unreachable",
        ids,
        blocked.get(0).fastener().at(),
        Words.count(ids.size(), "fastener", "fasteners")
            + " of the "
            + unit
            + " cannot be driven at any step that was found, "
            + Words.some(ways)
            + " in the way: "
            + Words.some(ids),
        remedy(words, blocked));
  }

  private static Finding nuts(List<Driving> nuts) {
    List<String> ids = ids(nuts);
    return Finding.mind(
        "bolt-nut",
        ids,
        nuts.get(0).fastener().tip(),
        Words.count(ids.size(), "nut", "nuts")
            + " under the stand's top cannot be reached with a wrench, "
            + Words.some(
                nuts.stream().flatMap(d -> d.inTheWay().stream()).distinct().sorted().toList())
            + " in the way: "
            + Words.some(ids),
        "let tee-nuts into the top from below before it goes on, and turn the bolts from above");
  }

  /** The other side where that is open; else how much room there is, in numbers. */
  private static String remedy(Words words, List<Driving> blocked) {
    boolean pockets =
        blocked.stream().allMatch(d -> d.fastener().kind() == FastenerKind.POCKET_SCREW);
    if (blocked.stream().allMatch(d -> d.instead().otherSide())) {
      return pockets
          ? "bore these pockets into the other face, where a drill has room (station.pockets)"
          : "drive them from the other side, where a tool has room";
    }
    double free = blocked.stream().mapToDouble(d -> d.instead().free()).min().orElse(0);
    if (free >= Instead.UNBOUNDED) {
      return "a tool's body is in the way at its side, not behind it: use a slimmer one (section tools),"
          + " or a joint whose screws face an open side";
    }
    return "behind the heads "
        + words.length(free)
        + " are free: use a tool that is no longer than that (section tools), or a joint whose"
        + " screws face an open side";
  }

  private static List<String> ids(List<Driving> drivings) {
    return drivings.stream().map(d -> d.fastener().id()).toList();
  }
}
