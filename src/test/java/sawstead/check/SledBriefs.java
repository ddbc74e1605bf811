package sawstead.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import sawstead.intake.BriefException;
import sawstead.intake.BriefReader;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** A saw alone, with lines changed or added, for tests of what is built for a saw. */
final class SledBriefs {
  /** 254 mm up 79, sheets of 12 mm: REF-TRD-08. */
  static final String SAW =
      """
      name: jig
      units: mm
      saw:
        table: {width: 700, depth: 560, height: 330, thickness: 30}
        bottom: closed
        feet: {left: 250, right: 290, front: 40, rear: 500}
        blade: {leftEdge: 330, arbor: 280, diameter: 254, height: 79, plate: 1.8, kerf: 2.8}
        knife: {thickness: 2.3, belowCrown: 3}
        slots: [{at: -130, width: 19, depth: 9.5}, {at: 130, width: 19, depth: 9.5}]
        fence: {kind: sliding, right: 450, left: 300}
      stock:
        - {name: ply-12, length: 2440, width: 1220, thickness: 12}
      """;

  /** Blade and slots in good order. */
  static final String ALIGNED =
      "alignment: {front: 120.00, rear: 120.02, widths: [[19, 19.02, 19.05], [19, 19, 19]]}\n";

  static final String SLED = "sleds:\n  - {id: cross, widest: 150}\n";

  private SledBriefs() {}

  static Station station(String text) {
    try {
      return Units.station(BriefReader.read("jig.yaml", text.getBytes(StandardCharsets.UTF_8)));
    } catch (BriefException e) {
      throw new AssertionError(e.getMessage() + "\n" + text, e);
    }
  }

  static Outcome ask(Check check, String text) {
    return check.judge(new Scene(station(text)));
  }

  /** Severity and rule of its stops and minds, sorted. */
  static List<String> grave(Outcome outcome) {
    return outcome.findings().stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .map(f -> f.severity().word() + " " + f.rule())
        .sorted()
        .toList();
  }

  /** Rules of all that forbids cutting what a text describes. */
  static List<String> stops(String text) {
    return Inspector.inspect(station(text)).findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .map(Finding::rule)
        .toList();
  }
}
