package sawstead.cli;

import java.nio.file.Path;
import java.util.List;
import sawstead.assembly.PocketSides;
import sawstead.brief.Brief;
import sawstead.check.Inspector;
import sawstead.check.Report;
import sawstead.intake.BriefException;
import sawstead.intake.BriefLines;
import sawstead.intake.BriefReader;
import sawstead.layout.Complaint;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.layout.packing.Watch;
import sawstead.layout.shop.Breakdown;
import sawstead.station.DesignException;
import sawstead.station.Station;
import sawstead.station.unit.Units;

/** From a file to its report: read, design, inspect. */
final class Bench {
  private Bench() {}

  /**
   * Reads a brief, designs its station and judges it.
   *
   * @throws Refusal with everything that is wrong with the brief
   */
  static Report report(Path file, Progress progress) throws Refusal {
    progress.begin("reading " + file);
    Brief brief = read(file);
    progress.begin("designing " + brief.name());
    Station station = design(file, brief);
    progress.begin("checking " + station.parts().size() + " bodies");
    return Inspector.inspect(station);
  }

  /**
   * Plans the cuts of a judged station.
   *
   * @throws CutRequestException with every complaint at its place in the file
   */
  static Breakdown breakdown(Path file, Report report, Effort effort, Watch watch)
      throws CutRequestException {
    try {
      return Breakdown.of(report, effort, watch);
    } catch (CutRequestException e) {
      throw new CutRequestException(e.complaints().stream().map(c -> placed(file, c)).toList());
    }
  }

  private static Complaint placed(Path file, Complaint complaint) {
    String where = place(file, complaint.where());
    return new Complaint(complaint.code(), complaint.what(), where, complaint.remedy());
  }

  private static Brief read(Path file) throws Refusal {
    try {
      return BriefReader.read(file);
    } catch (BriefException e) {
      throw new Refusal(
          e.problems().stream()
              .map(p -> new Trouble(p.what(), p.place(e.file()), p.remedy()))
              .toList());
    }
  }

  private static Station design(Path file, Brief brief) throws Refusal {
    try {
      return PocketSides.settled(turned -> Units.station(brief, turned));
    } catch (DesignException e) {
      throw new Refusal(List.of(new Trouble(e.getMessage(), place(file, e.path()), e.remedy())));
    }
  }

  private static String place(Path file, String path) {
    int line = BriefLines.lineOf(file, path);
    return file + (line > 0 ? ":" + line : "") + ", " + path;
  }
}
