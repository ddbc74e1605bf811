package sawstead.check;

import java.util.List;
import java.util.Set;
import sawstead.joinery.Fastener;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;

/**
 * A screw may pass through the parts that it joins, nothing else.
 *
 * <ul>
 *   <li>{@code screw-meets-body} (stop): it runs into a body that it does not join;
 *   <li>{@code screw-meets-screw} (stop): it runs into another screw.
 * </ul>
 *
 * Certified for shanks as cylinders (polygons round the true circle, by at most 0.02 mm).
 */
final class ScrewPathCheck implements Check {
  @Override
  public Outcome judge(Scene scene) {
    ScrewGroup group = new ScrewGroup();
    List<Fastener> all = scene.station().fasteners();
    List<Body> shanks = all.stream().map(Fastener::body).toList();
    for (int i = 0; i < all.size(); i++) {
      judgeBodies(scene, all.get(i), shanks.get(i), group);
      for (int j = i + 1; j < all.size(); j++) {
        judgePair(all, shanks, i, j, group);
      }
    }
    return Outcome.of(group.findings());
  }

  private static void judgeBodies(Scene scene, Fastener fastener, Body shank, ScrewGroup group) {
    Set<String> joins = Set.copyOf(fastener.joins());
    Box box = shank.box();
    for (Body other : scene.bodies()) {
      if (joins.contains(other.id()) || !other.box().overlaps(box, 0)) {
        continue;
      }
      Overlap.between(shank, other)
          .filter(o -> o.depth() > scene.contact())
          .ifPresent(
              o ->
                  group.add(
                      Severity.STOP,
                      "screw-meets-body",
                      List.of(other.id()),
                      fastener,
                      o.centroid(),
                      o.depth(),
                      (who, many, worst) ->
                          who
                              + " of "
                              + String.join(" and ", fastener.joins())
                              + (many ? " run into " : " runs into ")
                              + other.id(),
                      "move " + other.id() + " aside, or leave the screw out there"));
    }
  }

  private static void judgePair(
      List<Fastener> all, List<Body> shanks, int i, int j, ScrewGroup group) {
    if (!shanks.get(i).box().overlaps(shanks.get(j).box(), 0)) {
      return;
    }
    Fastener a = all.get(i);
    Fastener b = all.get(j);
    Overlap.between(shanks.get(i), shanks.get(j))
        .ifPresent(
            o ->
                group.add(
                    Severity.STOP,
                    "screw-meets-screw",
                    List.of(b.id()),
                    a,
                    o.centroid(),
                    o.depth(),
                    (who, many, worst) -> who + " (" + a.id() + ") runs into " + b.id(),
                    "move one of the two along its joint, or use shorter screws"));
  }
}
