package sawstead.preview.bench;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import sawstead.check.Finding;
import sawstead.check.Report;
import sawstead.check.Retrial;
import sawstead.check.Severity;
import sawstead.intake.BriefEdit;
import sawstead.preview.bench.Trial.Worth;
import sawstead.station.Station;

/**
 * Looks for the least change of one value that mends a finding. A value is set, the station is
 * designed again, and the check that found the matter is asked again; what seems to mend it is
 * judged whole before it is told. Claimed of a trial that mends: with this value the whole report
 * has the finding no more, and no stop that was not there before. Between the places tried, a
 * smaller change may mend it too; a value that mends only in a gap between them is not found.
 */
public final class Mending {
  /** Shares of the room to an end that are tried, least first. */
  private static final double[] SHARES = {0.03, 0.06, 0.12, 0.25, 0.5, 0.75, 1};

  /** What a brief says of a value that it leaves to the program. */
  private static final String LEFT = "unknown";

  /** Points that are nearer to each other are the same place, mm. */
  private static final double NEAR = 1;

  private final String file;
  private final String text;
  private final Finding finding;
  private final Report before;
  private final Retrial retrial;
  private final List<String> bodies;
  private final List<String> motions;
  private final Set<String> turned;

  private Mending(
      String file, Snapshot judged, Station was, Report before, Finding finding, Retrial retrial) {
    this.file = file;
    text = judged.text();
    turned = judged.turned();
    this.before = before;
    this.finding = finding;
    this.retrial = retrial;
    bodies = finding.about().stream().filter(id -> was.part(id).isPresent()).toList();
    motions = finding.about().stream().filter(id -> was.mover(id).isPresent()).toList();
  }

  /**
   * For one finding of a text that was judged.
   *
   * @param file the brief's file, in whose folder unit files are looked for
   * @return empty if the text was not judged, or has no such finding
   */
  public static Optional<Mending> of(String file, Snapshot judged, Finding finding) {
    if (judged.station().isEmpty() || judged.report().isEmpty()) {
      return Optional.empty();
    }
    Station was = judged.station().get();
    Report report = judged.report().get();
    return Retrial.of(finding, was).map(r -> new Mending(file, judged, was, report, finding, r));
  }

  /**
   * What one value is worth.
   *
   * @param wanted is asked between two trials whether to go on; if not, the value is worth nothing
   */
  public Trial by(Dial dial, BooleanSupplier wanted) {
    return dial instanceof Dial.Rule rule ? by(rule, wanted) : by((Dial.Words) dial, wanted);
  }

  /** What it is worth to leave a wish to the program, which then makes it as it must be. */
  public Optional<Trial> byLeaving(String path) {
    return look(path, LEFT) == Look.GONE ? judged(path, LEFT) : Optional.empty();
  }

  private Trial by(Dial.Words choice, BooleanSupplier wanted) {
    boolean bears = false;
    Optional<Trial> least = Optional.empty();
    for (String word : choice.words()) {
      if (!wanted.getAsBoolean()) {
        return nothing(choice);
      }
      Look look = look(choice.path(), word);
      bears |= look == Look.OTHER || look == Look.GONE;
      if (look == Look.GONE) {
        Optional<Trial> mends = judged(choice.path(), word);
        if (mends.isPresent()
            && (least.isEmpty() || mends.get().worth().compareTo(least.get().worth()) < 0)) {
          least = mends;
        }
      }
    }
    return least.orElse(bears ? bears(choice) : nothing(choice));
  }

  private Trial by(Dial.Rule rule, BooleanSupplier wanted) {
    Set<Look> ends = EnumSet.noneOf(Look.class);
    for (double end : new double[] {rule.high(), rule.low()}) {
      ends.add(look(rule.path(), rule.text().apply(end)));
    }
    if (ends.equals(EnumSet.of(Look.SAME))) {
      return nothing(rule);
    }
    boolean bears = ends.contains(Look.OTHER) || ends.contains(Look.GONE);
    double[] still = {rule.at(), rule.at()};
    for (double share : SHARES) {
      for (int side = 0; side < 2; side++) {
        if (!wanted.getAsBoolean()) {
          return nothing(rule);
        }
        double end = side == 0 ? rule.high() : rule.low();
        double place = rule.at() + share * (end - rule.at());
        if (end == rule.at()) {
          continue;
        }
        Look look = look(rule.path(), rule.text().apply(place));
        bears |= look == Look.OTHER || look == Look.GONE;
        if (look == Look.GONE) {
          Optional<Trial> mends = judged(rule, nearest(rule, still[side], place), place);
          if (mends.isPresent()) {
            return mends.get();
          }
        } else {
          still[side] = place;
        }
      }
    }
    return bears ? bears(rule) : nothing(rule);
  }

  /** The place nearest to one where it still stands at which it is gone, to a mark. */
  private double nearest(Dial.Rule rule, double stands, double gone) {
    double bad = stands;
    double good = gone;
    while (Math.abs(good - bad) > rule.mark()) {
      double middle = (bad + good) / 2;
      if (look(rule.path(), rule.text().apply(middle)) == Look.GONE) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    // The mark at or past the place, as seen from where it stands: its text may round back.
    return good + Math.signum(gone - stands) * rule.mark() / 2;
  }

  private Optional<Trial> judged(Dial.Rule rule, double least, double coarse) {
    double beyond = Math.max(rule.low(), Math.min(rule.high(), least));
    return judged(rule.path(), rule.text().apply(beyond))
        .or(() -> judged(rule.path(), rule.text().apply(coarse)));
  }

  /** What the whole report says of a value. */
  private Optional<Trial> judged(String path, String value) {
    return with(path, value)
        .map(t -> Bench.judge(Bench.design(file, t)))
        .flatMap(Snapshot::report)
        .filter(r -> Retrial.newStops(before.findings(), r.findings()).isEmpty())
        .filter(r -> r.findings().stream().noneMatch(f -> Retrial.isSame(finding, f)))
        .map(
            r ->
                new Trial(
                    path, stops(r.findings()).isEmpty() ? Worth.MENDS_ALL : Worth.MENDS, value));
  }

  private static List<Finding> stops(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() == Severity.STOP).toList();
  }

  /** How the matter looks with a value. */
  private enum Look {
    /** Its check says nothing of it any more. */
    GONE,
    /** It reads otherwise. */
    OTHER,
    /** It reads as before. */
    SAME,
    /**
     * There is no station, or it has the bodies or the motion no more: to do without is no mending.
     */
    NONE
  }

  private Look look(String path, String value) {
    Optional<String> changed = with(path, value);
    if (changed.isEmpty()) {
      return Look.SAME;
    }
    Optional<Station> station = designed(changed.get()).station();
    if (!station.map(this::hasAll).orElse(false)) {
      return Look.NONE;
    }
    Optional<Finding> now = retrial.again(station.get());
    return now.map(f -> reads(f) ? Look.SAME : Look.OTHER).orElse(Look.GONE);
  }

  /**
   * A first look. In which faces the pockets belong is found with the order of building, which
   * takes by far the longest and matters only to a check that looks at that order; what seems to
   * mend it is designed and judged whole in any case.
   */
  private Snapshot designed(String changed) {
    return retrial.isOfTheOrder()
        ? Bench.design(file, changed)
        : Bench.sketch(file, changed, turned);
  }

  /**
   * Whether it reads as before, in the same place. A hole elsewhere in a board moves the point that
   * is looked at by less than anybody sees, and has no bearing on it.
   */
  private boolean reads(Finding now) {
    boolean near =
        now.at().isPresent() == finding.at().isPresent()
            && now.at().map(at -> at.distance(finding.at().get()) < NEAR).orElse(true);
    return near
        && now.severity() == finding.severity()
        && now.about().equals(finding.about())
        && now.says().equals(finding.says())
        && now.remedy().equals(finding.remedy());
  }

  private boolean hasAll(Station station) {
    return station.parts().keySet().containsAll(bodies)
        && motions.stream().allMatch(m -> station.mover(m).isPresent());
  }

  private Optional<String> with(String path, String value) {
    return BriefEdit.set(text, path, value).map(e -> e.in(text)).filter(t -> !t.equals(text));
  }

  private static Trial nothing(Dial dial) {
    return new Trial(dial.path(), Worth.NOTHING, "");
  }

  private static Trial bears(Dial dial) {
    return new Trial(dial.path(), Worth.BEARS, "");
  }
}
