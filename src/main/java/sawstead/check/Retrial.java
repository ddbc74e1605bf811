package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import sawstead.station.Station;

/**
 * Asks stations that were changed whether one finding still stands, with the labour of the one
 * check that found it.
 */
public final class Retrial {
  private final Finding finding;
  private final Check check;
  private final Function<Station, Scene> look;
  private final boolean ordered;

  private Retrial(Finding finding, Check check, Function<Station, Scene> look, boolean ordered) {
    this.finding = finding;
    this.check = check;
    this.look = look;
    this.ordered = ordered;
  }

  /** Whether the check looks at the order of building, and so at which tool reaches what. */
  public boolean isOfTheOrder() {
    return ordered;
  }

  /**
   * For one finding of a station.
   *
   * @return empty if no check finds it in this station
   */
  public static Optional<Retrial> of(Finding finding, Station station) {
    List<Function<Station, Scene>> looks = new ArrayList<>();
    for (String id : finding.about()) {
      if (station.mover(id).isPresent()) {
        looks.add(s -> Scene.ofOneMotion(s, id));
      }
    }
    looks.add(Scene::new);
    return looks.stream().flatMap(look -> of(finding, station, look).stream()).findFirst();
  }

  private static Optional<Retrial> of(
      Finding finding, Station station, Function<Station, Scene> look) {
    Scene scene = look.apply(station);
    return Checks.ALL.stream()
        .filter(c -> c.judge(scene).findings().contains(finding))
        .findFirst()
        .map(c -> new Retrial(finding, c, look, plans(c, look.apply(station))));
  }

  /** Whether a check asks how it is built: in a scene of its own, where no other asked before. */
  private static boolean plans(Check check, Scene own) {
    check.judge(own);
    return own.isPlanned();
  }

  /** What the check says now of the same matter, as bad as before or worse; empty if nothing. */
  public Optional<Finding> again(Station changed) {
    return check.judge(look.apply(changed)).findings().stream()
        .filter(f -> isSame(finding, f))
        .findFirst();
  }

  /**
   * The stops of a station that was changed which were none before. Each stop from before stands
   * for one at most: two of its kind are one more. What was only to be minded is new as a stop, and
   * so is what is about a body that it was not about.
   *
   * @param before findings of the station as it was
   * @param after findings of the changed one
   */
  public static List<Finding> newStops(List<Finding> before, List<Finding> after) {
    List<Finding> known = new ArrayList<>(stops(before));
    List<Finding> left = new ArrayList<>(stops(after));
    // First those about the same bodies, so that none of them is taken for one about fewer.
    left.removeIf(f -> take(known, k -> Set.copyOf(k.about()).equals(Set.copyOf(f.about())), f));
    left.removeIf(f -> take(known, k -> k.about().containsAll(f.about()), f));
    return left;
  }

  private static List<Finding> stops(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() == Severity.STOP).toList();
  }

  private static boolean take(List<Finding> known, Predicate<Finding> alike, Finding finding) {
    for (int k = 0; k < known.size(); k++) {
      if (known.get(k).rule().equals(finding.rule()) && alike.test(known.get(k))) {
        known.remove(k);
        return true;
      }
    }
    return false;
  }

  /** Whether a finding is another's matter, as bad or worse: of its rule, and about one of its. */
  public static boolean isSame(Finding was, Finding is) {
    return is.rule().equals(was.rule())
        && is.severity().compareTo(was.severity()) <= 0
        && (was.about().isEmpty() || is.about().stream().anyMatch(was.about()::contains));
  }
}
