package sawstead.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import sawstead.brief.Brief;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** Stations of a few panels of one's own, written as a user would, for tests of single checks. */
final class Sample {
  private static final String HEAD =
      """
      name: Sample
      units: mm
      stock:
        - {name: ply, nominal: 18 mm, length: 2440, width: 1220, thickness: 18, density: 600, trim: 5}
      """;

  private Sample() {}

  /**
   * The station of a brief that has one sheet of 18 mm named ply and the given further sections.
   */
  static Station station(String sections) {
    try {
      byte[] text = (HEAD + sections).getBytes(StandardCharsets.UTF_8);
      return Units.station(BriefReader.read("sample.yaml", text));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage(), e);
    }
  }

  /** The brief of a single panel, for stations that a test puts together by hand. */
  static Brief brief() {
    return station(
            "extras: [{id: own/one, stock: ply, outline: [[0,0],[100,0],[0,100]], place: {at:"
                + " [0,0,0]}}]")
        .brief();
  }

  /** What one check has to say about such a station. */
  static Outcome ask(Check check, String sections) {
    return check.judge(new Scene(station(sections)));
  }

  /** The rules of its findings with their severities, sorted: {@code stop clash}. */
  static List<String> rules(Outcome outcome) {
    return outcome.findings().stream()
        .map(f -> f.severity().word() + " " + f.rule())
        .sorted()
        .toList();
  }
}
