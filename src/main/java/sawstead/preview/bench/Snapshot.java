package sawstead.preview.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import sawstead.check.Report;
import sawstead.station.Station;

/**
 * A text and what has been found out about it so far.
 *
 * @param text of the brief
 * @param station empty if the text has flaws
 * @param turned the joints whose pockets lie in the other face than usual, as they were settled
 * @param report empty while it is being checked, or if there is no station
 * @param flaws in the order of the lines
 */
public record Snapshot(
    String text,
    Optional<Station> station,
    Set<String> turned,
    Optional<Report> report,
    List<Flaw> flaws) {
  /** Copies the list and the set. */
  public Snapshot {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(station, "station");
    turned = Set.copyOf(turned);
    Objects.requireNonNull(report, "report");
    flaws = List.copyOf(flaws);
  }
}
