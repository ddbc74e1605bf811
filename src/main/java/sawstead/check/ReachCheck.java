package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.station.Part;

/**
 * A driver reaches every screw when its turn comes: {@code screw-unreachable} (mind), one finding a
 * unit. Says what {@link Drivings} says, no more: a straight bit in line with the screw.
 */
final class ReachCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    Map<String, List<Driving>> byUnit = new TreeMap<>();
    for (Driving driving : scene.drivings()) {
      if (!driving.reachable()) {
        String first = driving.fastener().joins().get(0);
        String unit = scene.station().part(first).map(Part::unit).orElse(first);
        byUnit.computeIfAbsent(unit, u -> new ArrayList<>()).add(driving);
      }
    }
    return Outcome.of(
        byUnit.entrySet().stream().map(e -> finding(e.getKey(), e.getValue())).toList());
  }

  private static Finding finding(String unit, List<Driving> blocked) {
    List<String> ids = blocked.stream().map(d -> d.fastener().id()).toList();
    return Finding.mind(
        "screw-unreachable",
        ids,
        blocked.get(0).fastener().at(),
        Words.count(ids.size(), "screw", "screws")
            + " of the "
            + unit
            + " cannot be reached with a straight bit once the parts of that step stand: "
            + Words.some(ids),
        "drive them before the parts in front of them are there, or use a right-angle driver");
  }
}
