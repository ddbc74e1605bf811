package sawstead.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import sawstead.intake.BriefReader;
import sawstead.station.unit.Units;

/** Briefs made up from a seed, judged as a whole. */
final class UnseenSaws {
  private UnseenSaws() {}

  /** The report of a text; a text that cannot be read or built fails with its seed. */
  static Report report(long seed, String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return Inspector.inspect(Units.station(BriefReader.read("seed " + seed, bytes)));
    } catch (Exception e) {
      throw new AssertionError("seed " + seed + ": " + e.getMessage() + "\n" + text, e);
    }
  }

  /** Rule and words of all findings that forbid cutting. */
  static List<String> stops(Report report) {
    return report.findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .map(f -> f.rule() + ": " + f.says())
        .toList();
  }
}
