package sawstead.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import sawstead.brief.PocketSide;
import sawstead.brief.StationWish;
import sawstead.joinery.FastenerKind;
import sawstead.station.Draft;
import sawstead.station.Station;

/**
 * Decides in which face of a board its pockets are, where the brief leaves that open: inside, as
 * people like them, and outside for those joints whose pockets no tool of the user's reaches inside
 * in any order found, but does outside. The station is then designed again, and kept if that order
 * leaves fewer screws that cannot be driven.
 */
public final class PocketSides {
  private PocketSides() {}

  /**
   * What was decided.
   *
   * @param station with its pockets where they can be driven
   * @param turned joints whose pockets lie outside, by {@link Draft#pair}
   */
  public record Decided(Station station, Set<String> turned) {
    public Decided {
      turned = Set.copyOf(turned);
    }
  }

  /** The station with its pockets where they can be driven. */
  public static Station settled(Function<Set<String>, Station> design) {
    return decided(design).station();
  }

  /**
   * The same, and which pockets were turned for it.
   *
   * @param design makes the station with the pockets of some joints turned, by {@link Draft#pair}
   */
  public static Decided decided(Function<Set<String>, Station> design) {
    Station inside = design.apply(Set.of());
    Optional<StationWish> wish =
        inside.brief().station().filter(s -> s.pockets() == PocketSide.AUTO);
    boolean open =
        wish.isPresent()
            && inside.fasteners().stream().anyMatch(f -> f.kind() == FastenerKind.POCKET_SCREW);
    Decided asUsual = new Decided(inside, Set.of());
    if (!open) {
      return asUsual;
    }
    double contact = wish.get().contact().nominal();
    BuildPlan plan = Assembly.plan(inside, contact);
    Set<String> turned = new TreeSet<>();
    for (Driving driving : plan.drivings()) {
      List<String> joins = driving.fastener().joins();
      if (driving.fastener().kind() == FastenerKind.POCKET_SCREW
          && !isDriven(driving)
          && driving.instead().otherSide()) {
        turned.add(Draft.pair(joins.get(0), joins.get(1)));
      }
    }
    if (turned.isEmpty()) {
      return asUsual;
    }
    Station outside = design.apply(turned);
    return undriven(Assembly.plan(outside, contact)) < undriven(plan)
        ? new Decided(outside, turned)
        : asUsual;
  }

  private static long undriven(BuildPlan plan) {
    return plan.drivings().stream().filter(d -> !isDriven(d)).count();
  }

  private static boolean isDriven(Driving driving) {
    return driving.use().filter(use -> use.tool().owned()).isPresent();
  }
}
