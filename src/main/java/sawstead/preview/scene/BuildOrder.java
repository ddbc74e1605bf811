package sawstead.preview.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sawstead.assembly.Approach;
import sawstead.assembly.BuildPlan;
import sawstead.solid.Vec;
import sawstead.station.Station;

/**
 * The order in which a station is seen to be built: that of the report, and until there is a report
 * the one in which the units name their steps.
 */
public final class BuildOrder {
  private final List<Coming> comings;
  private final Map<String, Optional<Coming>> bringing = new ConcurrentHashMap<>();

  private BuildOrder(List<Coming> comings) {
    this.comings = List.copyOf(comings);
  }

  /** As the units of a station name their steps. */
  public static BuildOrder of(Station station) {
    return new BuildOrder(
        station.steps().stream()
            .map(
                s ->
                    new Coming(
                        s.number(),
                        String.join(", ", s.places()),
                        s.places(),
                        s.fixing(),
                        s.direction(),
                        List.of(),
                        List.of(),
                        s.cautions()))
            .toList());
  }

  /** As the report tells it. */
  public static BuildOrder of(BuildPlan plan) {
    return new BuildOrder(
        plan.steps().stream()
            .map(
                s ->
                    new Coming(
                        s.number(),
                        s.name(),
                        s.places(),
                        s.fixing(),
                        s.direction(),
                        s.path(),
                        s.tools(),
                        s.cautions()))
            .toList());
  }

  /** The steps; their numbers count from 1. */
  public List<Coming> comings() {
    return comings;
  }

  /** Whether all that it places is there. */
  boolean fits(Station station) {
    return !comings.isEmpty()
        && comings.stream().allMatch(c -> station.parts().keySet().containsAll(c.places()));
  }

  /** The step of a number; empty if there is none. */
  public Optional<Coming> at(int number) {
    return comings.stream().filter(c -> c.number() == number).findFirst();
  }

  /**
   * The step that brings a body: the one that places it, or else the one that places its nearest of
   * kin, which is the body whose id shares the longest beginning with it, the unit at least. A
   * fence comes with its saw, a hinge with its lid.
   */
  public Optional<Coming> bringing(String id) {
    return bringing.computeIfAbsent(id, this::found);
  }

  private Optional<Coming> found(String id) {
    Optional<Coming> own = comings.stream().filter(c -> c.places().contains(id)).findFirst();
    if (own.isPresent()) {
      return own;
    }
    Coming nearest = null;
    int most = id.indexOf('/');
    for (Coming coming : comings) {
      for (String placed : coming.places()) {
        int shared = shared(id, placed);
        if (shared > most && most > 0) {
          most = shared;
          nearest = coming;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static int shared(String a, String b) {
    int n = 0;
    while (n < Math.min(a.length(), b.length()) && a.charAt(n) == b.charAt(n)) {
      n++;
    }
    return n;
  }

  /**
   * One step.
   *
   * @param number from 1
   * @param name of what comes
   * @param places ids of the bodies that come
   * @param fixing how they are fixed, in the words of the report
   * @param direction of the last leg of their way, unit vector; zero where no way is known
   * @param path their way, leg by leg, mm; empty if they come straight along the direction
   * @param tools words of the tools that it takes
   * @param cautions what to mind
   */
  public record Coming(
      int number,
      String name,
      List<String> places,
      String fixing,
      Vec direction,
      List<Vec> path,
      List<String> tools,
      List<String> cautions) {
    /** Nobody needs to see more of a straight way than this, mm. */
    private static final double WAY = 450;

    /** Copies the lists. */
    public Coming {
      places = List.copyOf(places);
      path = List.copyOf(path);
      tools = List.copyOf(tools);
      cautions = List.copyOf(cautions);
    }

    /**
     * Where it still is, seen from its place, mm.
     *
     * @param done share of the way that is done, 0 to 1
     */
    public Vec away(double done) {
      List<Vec> legs = legs();
      double left = (1 - done) * legs.stream().mapToDouble(Vec::length).sum();
      Vec away = Vec.ZERO;
      for (int k = legs.size() - 1; k >= 0 && left > 0; k--) {
        double length = legs.get(k).length();
        double part = Math.min(left, length);
        away = away.minus(legs.get(k).scale(part / length));
        left -= part;
      }
      return away;
    }

    private List<Vec> legs() {
      if (path.isEmpty()) {
        return direction.length() == 0 ? List.of() : List.of(direction.scale(WAY));
      }
      List<Vec> legs = new ArrayList<>(path);
      legs.removeIf(leg -> leg.length() == 0);
      if (!legs.isEmpty() && legs.get(0).length() > WAY) {
        legs.set(0, legs.get(0).unit().scale(WAY));
      }
      return legs;
    }

    /** What comes, from where, with what tools, and what to mind: without a full stop. */
    public String says() {
      StringBuilder says = new StringBuilder(name).append(from());
      if (!tools.isEmpty()) {
        says.append("  \u00b7  with ").append(String.join(", ", tools));
      }
      if (!cautions.isEmpty()) {
        says.append("  \u00b7  mind: ").append(String.join("; ", cautions));
      }
      return says.toString();
    }

    private String from() {
      String from = Approach.words(direction, path.size());
      return from.isEmpty() ? ": no way was found by which it comes" : ", " + from;
    }
  }
}
