package sawstead.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sawstead.brief.Saw;
import sawstead.brief.Spot;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Site;
import sawstead.station.Support;

/**
 * Where the weight of a station lies and what its supports carry. Lengths mm, masses kg.
 *
 * <p>Invariants: the loads of three supports that carry a mass at a point inside their triangle add
 * up to the mass (REF-STB-04); the static margin is positive exactly when the point lies inside the
 * hull of the supports (REF-STB-02).
 */
final class Balance {
  /** Standard gravity, m/s2. */
  private static final double GRAVITY = 9.80665;

  private final double mass;
  private final Vec centre;
  private final List<Support> supports;

  Balance(double mass, Vec centre, List<Support> supports) {
    this.mass = mass;
    this.centre = centre;
    this.supports = List.copyOf(supports);
  }

  /**
   * The balance of a station as it stands, without what stands beside it; empty when nothing of it
   * has a mass.
   */
  static Optional<Balance> of(Scene scene) {
    double mass = 0;
    Vec moment = Vec.ZERO;
    Set<String> alone = Standing.alone(scene.parts());
    Set<String> beside = beside(scene);
    for (Part part : scene.parts()) {
      if (alone.contains(part.id()) || beside.contains(part.id())) {
        continue;
      }
      mass += part.mass();
      moment = moment.plus(centreOf(scene, part).scale(part.mass()));
    }
    return mass > 0
        ? Optional.of(new Balance(mass, moment.scale(1 / mass), scene.station().supports()))
        : Optional.empty();
  }

  /** What is set elsewhere before it moves is kept beside the station, which does not carry it. */
  private static Set<String> beside(Scene scene) {
    return scene.station().movers().stream()
        .filter(m -> !m.setting().set().equals(Placement.identity()))
        .flatMap(m -> m.moves().stream())
        .collect(Collectors.toSet());
  }

  /** The centroid of a part; the saw's mass sits where the user found it, not in the middle. */
  private static Vec centreOf(Scene scene, Part part) {
    Optional<Site> site = scene.station().site();
    if (site.isPresent() && part.unit().equals("saw")) {
      Saw saw = site.get().saw();
      Spot spot = saw.centre();
      return new Vec(
          spot.x().nominal(),
          spot.y().nominal(),
          site.get().levels().table() - spot.below().nominal());
    }
    return part.body().centroid();
  }

  double mass() {
    return mass;
  }

  Vec centre() {
    return centre;
  }

  /**
   * Least distance from the centre of mass, seen from above, to an edge of the hull of the contacts
   * (REF-STB-02), less what a swivelling caster's contact may come nearer; negative outside.
   */
  double margin() {
    List<Support> hull = hull();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < hull.size(); i++) {
      Support a = hull.get(i);
      Support b = hull.get((i + 1) % hull.size());
      least = Math.min(least, inside(a, b) - Math.max(a.wander(), b.wander()));
    }
    return least;
  }

  /** Horizontal force at a height that begins to tip it over an edge, N (REF-STB-01). */
  double tippingForce(double height) {
    return mass * GRAVITY * margin() / height;
  }

  /**
   * The greatest load that a support may carry when only three touch the floor, which is how four
   * wheels stand on a floor that is not flat (REF-STB-04), kg.
   */
  double greatestLoad() {
    double greatest = 0;
    for (int i = 0; i < supports.size(); i++) {
      for (int j = i + 1; j < supports.size(); j++) {
        for (int k = j + 1; k < supports.size(); k++) {
          double[] loads = loads(supports.get(i), supports.get(j), supports.get(k));
          if (loads.length == 3) {
            for (double load : loads) {
              greatest = Math.max(greatest, load);
            }
          }
        }
      }
    }
    return greatest;
  }

  /** Loads of three supports, kg; empty when the centre of mass lies outside their triangle. */
  double[] loads(Support a, Support b, Support c) {
    double whole = cross(a.at(), b.at(), c.at());
    if (Math.abs(whole) < 1e-9) {
      return new double[0];
    }
    double onA = cross(centre, b.at(), c.at()) / whole;
    double onB = cross(a.at(), centre, c.at()) / whole;
    double onC = 1 - onA - onB;
    if (Math.min(onA, Math.min(onB, onC)) < -1e-12) {
      return new double[0];
    }
    return new double[] {mass * onA, mass * onB, mass * onC};
  }

  /**
   * Distance of the centre of mass from the line through two contacts, positive to its left, mm.
   */
  private double inside(Support a, Support b) {
    double length = Math.hypot(b.at().x() - a.at().x(), b.at().y() - a.at().y());
    return cross(a.at(), b.at(), centre) / length;
  }

  /** The convex hull of the contacts, counter-clockwise (Andrew's monotone chain, 1979). */
  private List<Support> hull() {
    List<Support> sorted =
        supports.stream()
            .sorted(
                Comparator.comparingDouble((Support s) -> s.at().x())
                    .thenComparingDouble(s -> s.at().y()))
            .toList();
    List<Support> hull = new ArrayList<>(half(sorted));
    List<Support> reversed = new ArrayList<>(sorted);
    java.util.Collections.reverse(reversed);
    hull.addAll(half(reversed));
    return hull;
  }

  private static List<Support> half(List<Support> sorted) {
    List<Support> chain = new ArrayList<>();
    for (Support next : sorted) {
      while (chain.size() >= 2
          && cross(chain.get(chain.size() - 2).at(), chain.get(chain.size() - 1).at(), next.at())
              <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(next);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  /** Twice the area of a triangle seen from above, positive when counter-clockwise, mm2. */
  private static double cross(Vec a, Vec b, Vec c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
  }
}
