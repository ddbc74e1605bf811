package sawstead.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sawstead.check.Finding;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.check.Words;
import sawstead.drawing.page.Booklet;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.solid.Vec;
import sawstead.station.Figure;
import sawstead.station.Part;
import sawstead.station.Station;

/** The first page: the station as it will be, its figures, and what holds for every step. */
final class CoverPage {
  private static final double PICTURE = 0.5;

  private final Booklet book;
  private final Report report;
  private final Words words;

  CoverPage(Booklet book, Report report) {
    this.book = book;
    this.report = report;
    words = new Words(report.station().brief().units());
  }

  void draw() throws IOException {
    try (Paper paper = book.page()) {
      double width = paper.width() - 2 * Paper.MARGIN;
      double top = paper.height() - Paper.MARGIN;
      String title = "Build: " + report.station().brief().name();
      paper.text(
          paper.face(true).within(title, 22, width), Paper.MARGIN, top - 20, 22, true, Ink.INK);
      double high = PICTURE * paper.height();
      Scenes scenes = new Scenes(report.station(), report.plan().steps());
      new Picture(
              Camera.USUAL,
              scenes.finished(),
              List.of(),
              new Picture.Frame(Paper.MARGIN, top - 34 - high, width, high))
          .draw(paper);
      Sentence.write(said(), paper, Paper.MARGIN, top - 42 - high, width);
      book.foot(paper);
    }
  }

  private List<Sentence> said() {
    List<Sentence> said = new ArrayList<>();
    if (report.forbidsCutting()) {
      said.add(Sentence.mind("do not cut. Findings forbid it: run check first"));
    }
    said.add(Sentence.of(figures()));
    said.add(
        Sentence.of(
            "Each page has two steps: what stands is pale, what comes is birch or blue, the arrow is"
                + " its way. A thing has the same name on its panel's page, in the cut plan, on the"
                + " sheet and in the 3D view."));
    said.add(
        Sentence.of(
            "Dry fit each step before the glue. Drill every pilot. Glue only what a step says is"
                + " glued. Compare diagonals before the last screw of a frame."));
    said.add(
        Sentence.mind(
            "the saw stays unplugged while you build around it. Glasses and mask when you drill and"
                + " sand; let nobody stand under what is not screwed yet. Wiring is for a licensed"
                + " electrician; local codes come first"));
    for (Finding finding : report.findings()) {
      if (finding.severity() == Severity.MIND) {
        said.add(Sentence.mind(finding.says() + ". " + finding.remedy()));
      }
    }
    return said;
  }

  private String figures() {
    Station station = report.station();
    Vec size = Scenes.all(station).size();
    double mass = station.parts().values().stream().mapToDouble(Part::mass).sum();
    Figure height = station.figures().get("workingHeight");
    String first = height == null ? "" : "Working height " + words.length(height.nominal()) + ". ";
    return first
        + "In all "
        + words.length(size.x())
        + " wide, "
        + words.length(size.y())
        + " deep, "
        + words.length(size.z())
        + " high, about "
        + words.mass(mass)
        + " with saw and vac; "
        + report.plan().steps().size()
        + " steps, "
        + station.boards().size()
        + " panels, "
        + station.fasteners().size()
        + " fasteners.";
  }
}
