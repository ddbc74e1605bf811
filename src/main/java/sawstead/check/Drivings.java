package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.Step;

/**
 * When each fastener is driven, and whether a straight bit reaches its head then.
 *
 * <p>A fastener is driven in the step that brings the last of its parts. When all of them come in
 * that step, it is driven on the bench, and only they can be in the way; else what earlier steps
 * brought can be too, each part in its final place. What comes in the same step can wait until it
 * is driven, and what no step names comes whenever it may. The bit is {@link #BIT} long and as
 * thick as the head, at least {@link #THIN}; the drill behind it is not looked at.
 */
final class Drivings {
  /** Length of a bit in its holder, mm (common practice, no source). */
  static final double BIT = 75;

  /** Thickness of a bit holder, mm (common practice, no source). */
  static final double THIN = 10;

  private final Station station;
  private final double contact;
  private final Map<String, Integer> steps = new HashMap<>();
  private final Map<String, Integer> firstOfUnit = new HashMap<>();

  private Drivings(Station station, double contact) {
    this.station = station;
    this.contact = contact;
    for (Step step : station.steps()) {
      for (String id : step.places()) {
        steps.putIfAbsent(id, step.number());
        firstOfUnit.merge(unit(id), step.number(), Math::min);
      }
    }
  }

  static List<Driving> of(Station station, double contact) {
    Drivings drivings = new Drivings(station, contact);
    List<Driving> found = new ArrayList<>();
    for (Fastener fastener : station.fasteners()) {
      int step = fastener.joins().stream().mapToInt(drivings::step).max().orElse(0);
      found.add(new Driving(fastener, step, drivings.isReachable(fastener, step)));
    }
    found.sort(Comparator.comparing(d -> d.fastener().id()));
    return found;
  }

  private int step(String id) {
    Integer own = steps.get(id);
    return own != null ? own : firstOfUnit.getOrDefault(unit(id), 0);
  }

  private static String unit(String id) {
    int slash = id.indexOf('/');
    return slash < 0 ? id : id.substring(0, slash);
  }

  private boolean isReachable(Fastener fastener, int step) {
    Body bit = bit(fastener);
    Box box = bit.box();
    for (Part part : station.parts().values()) {
      // A pocket is bored into the first part, whose solid keeps it as material.
      boolean ownPocket =
          fastener.kind() == FastenerKind.POCKET_SCREW
              && !fastener.joins().isEmpty()
              && fastener.joins().get(0).equals(part.id());
      if (ownPocket || !isThere(part.id(), fastener, step) || !part.body().box().overlaps(box, 0)) {
        continue;
      }
      if (Overlap.between(bit, part.body()).filter(o -> o.depth() > contact).isPresent()) {
        return false;
      }
    }
    return true;
  }

  private boolean isThere(String id, Fastener fastener, int step) {
    if (fastener.joins().contains(id)) {
      return true;
    }
    boolean onTheBench = fastener.joins().stream().allMatch(j -> step(j) == step);
    int own = step(id);
    return !onTheBench && own > 0 && own < step;
  }

  private static Body bit(Fastener fastener) {
    Vec back = fastener.axis().scale(-1);
    Vec aside = Math.abs(back.x()) < 0.5 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = aside.minus(back.scale(aside.dot(back))).unit();
    double diameter = Math.max(THIN, fastener.headDiameter());
    return new Body(
        fastener.id(),
        Solids.cylinder(diameter, BIT),
        new Placement(u, back.cross(u), back, fastener.at()));
  }
}
