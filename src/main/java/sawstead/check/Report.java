package sawstead.check;

import java.util.List;
import java.util.Objects;
import sawstead.assembly.BuildPlan;
import sawstead.assembly.Driving;
import sawstead.station.Station;

/**
 * All that the checks found out about a station. The station itself is in it, since every file is
 * written from the same one.
 *
 * @param station what was judged, with the ways out of what is kept in it as further motions
 * @param clashes every pair of bodies that overlap by more than the contact tolerance, by ids
 * @param gaps free ways of every envelope, by id
 * @param passages what was found about every motion, by id
 * @param plan the order in which it is built, with every fastener's step and tool
 * @param margins by how much things fit, in the order of the checks
 * @param findings worst first
 */
public record Report(
    Station station,
    List<Clash> clashes,
    List<Gap> gaps,
    List<Passage> passages,
    BuildPlan plan,
    List<Margin> margins,
    List<Finding> findings) {
  public Report {
    Objects.requireNonNull(station, "station");
    clashes = List.copyOf(clashes);
    gaps = List.copyOf(gaps);
    passages = List.copyOf(passages);
    Objects.requireNonNull(plan, "plan");
    margins = List.copyOf(margins);
    findings = List.copyOf(findings);
  }

  /** Every fastener with its step, by id. */
  public List<Driving> drivings() {
    return plan.drivings();
  }

  /** Whether a finding forbids cutting. */
  public boolean forbidsCutting() {
    return findings.stream().anyMatch(f -> f.severity() == Severity.STOP);
  }

  /** How many findings have that weight. */
  public long count(Severity severity) {
    return findings.stream().filter(f -> f.severity() == severity).count();
  }
}
