package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.assembly.Driving;
import sawstead.joinery.FastenerKind;
import sawstead.station.Part;

/**
 * Every fastener can be driven when its turn comes, one finding a unit:
 *
 * <ul>
 *   <li>{@code screw-unreachable} (stop): no tool's envelope is free of what stands at its step,
 *       and no other order was found in which it would be;
 *   <li>{@code bolt-nut} (mind): no wrench reaches the nut of a bolt;
 *   <li>{@code tool-needed} (mind): only a tool reaches it that the user is not known to own.
 * </ul>
 *
 * Conservative: an envelope is a little larger than its tool, and a grip is tried every 15 degrees.
 */
final class ReachCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Map<String, List<Driving>> blocked = new TreeMap<>();
    Map<String, List<Driving>> lacking = new TreeMap<>();
    List<Driving> nuts = new ArrayList<>();
    for (Driving driving : scene.plan().drivings()) {
      String first = driving.fastener().joins().get(0);
      String unit = scene.station().part(first).map(Part::unit).orElse(first);
      boolean bolt = driving.fastener().kind() == FastenerKind.BOLT;
      if (!driving.reachable() && bolt) {
        nuts.add(driving);
      } else if (!driving.reachable()) {
        blocked.computeIfAbsent(unit, u -> new ArrayList<>()).add(driving);
      } else if (!driving.use().orElseThrow().tool().owned()) {
        lacking.computeIfAbsent(unit, u -> new ArrayList<>()).add(driving);
      }
    }
    List<Finding> findings = new ArrayList<>();
    if (!nuts.isEmpty()) {
      findings.add(nuts(nuts));
    }
    blocked.forEach((unit, all) -> findings.add(unreachable(unit, all)));
    lacking.forEach((unit, all) -> findings.add(lacking(unit, all)));
    return Outcome.of(findings);
  }

  private static Finding unreachable(String unit, List<Driving> blocked) {
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
        "drive from the other side, or choose another joint there (pocket, dado) whose screws face"
            + " the open side");
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

  private static Finding lacking(String unit, List<Driving> lacking) {
    List<String> ids = ids(lacking);
    String tool = lacking.get(0).use().orElseThrow().tool().word();
    return Finding.mind(
        "tool-needed",
        ids,
        lacking.get(0).fastener().at(),
        Words.count(ids.size(), "fastener", "fasteners")
            + " of the "
            + unit
            + " can only be driven with a "
            + tool
            + ": "
            + Words.some(ids),
        "borrow one, or leave these out and let glue and clamps hold where the others suffice");
  }

  private static List<String> ids(List<Driving> drivings) {
    return drivings.stream().map(d -> d.fastener().id()).toList();
  }
}
