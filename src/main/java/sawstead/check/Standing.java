package sawstead.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sawstead.station.Part;

/**
 * What stands on the floor by itself and so is not carried by the stand: a till of one's own beside
 * the saw. A group of parts that touch each other, one of them the floor, and none of them the
 * stand, its casters or the saw.
 */
final class Standing {
  /** Parts nearer to each other than this touch, mm. */
  private static final double TOUCH = 1;

  private static final Set<String> CARRYING = Set.of("stand", "casters", "saw");

  private Standing() {}

  /** Ids of the parts that stand by themselves. */
  static Set<String> alone(List<Part> parts) {
    Set<String> alone = new HashSet<>();
    Set<String> seen = new HashSet<>();
    for (Part part : parts) {
      if (part.body().box().low().z() <= TOUCH && !seen.contains(part.id())) {
        List<Part> group = group(part, parts);
        group.forEach(p -> seen.add(p.id()));
        if (group.stream().noneMatch(p -> CARRYING.contains(p.unit()))) {
          group.forEach(p -> alone.add(p.id()));
        }
      }
    }
    return alone;
  }

  private static List<Part> group(Part first, List<Part> parts) {
    List<Part> group = new ArrayList<>();
    List<Part> rest = new ArrayList<>(parts);
    Deque<Part> open = new ArrayDeque<>(List.of(first));
    rest.removeIf(p -> p == first);
    while (!open.isEmpty()) {
      Part part = open.pop();
      group.add(part);
      List<Part> near =
          rest.stream().filter(p -> p.body().box().overlaps(part.body().box(), TOUCH)).toList();
      rest.removeAll(near);
      open.addAll(near);
    }
    return group;
  }
}
