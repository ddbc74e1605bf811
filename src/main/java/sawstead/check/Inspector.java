package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import sawstead.station.Station;

/** Asks a station every question there is. */
public final class Inspector {
  private Inspector() {}

  /** Judges a station; the same station gives the same report. */
  public static Report inspect(Station station) {
    Scene scene = new Scene(station);
    List<Finding> findings = new ArrayList<>();
    List<Margin> margins = new ArrayList<>();
    for (Check check : Checks.ALL) {
      Outcome outcome = check.judge(scene);
      findings.addAll(outcome.findings());
      margins.addAll(outcome.margins());
    }
    findings.sort(Finding.WORST_FIRST);
    return new Report(
        scene.whole(),
        scene.clashes(),
        scene.gaps(),
        scene.passages(),
        scene.plan(),
        margins,
        findings);
  }
}
