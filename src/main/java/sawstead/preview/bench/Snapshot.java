package sawstead.preview.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.check.Report;
import sawstead.station.Station;

/**
 * A text and what has been found out about it so far.
 *
 * @param text of the brief
 * @param station empty if the text has flaws
 * @param report empty while it is being checked, or if there is no station
 * @param flaws in the order of the lines
 */
public record Snapshot(
    String text, Optional<Station> station, Optional<Report> report, List<Flaw> flaws) {
  /** Copies the list. */
  public Snapshot {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(station, "station");
    Objects.requireNonNull(report, "report");
    flaws = List.copyOf(flaws);
  }
}
