package sawstead.cli;

import java.util.ArrayList;
import java.util.List;
import sawstead.check.Dimension;
import sawstead.check.Finding;
import sawstead.check.Margin;
import sawstead.check.Report;
import sawstead.check.Severity;
import sawstead.check.Words;
import sawstead.station.Figure;

/**
 * A report for people: the verdict with the working height, the sum of the heights as one would
 * write it on a board, what fits by how much, then findings in three lines each, worst first.
 */
final class ReportText {
  private final Report report;
  private final Paint paint;

  /** What is less is printed as 0, in every dimension. */
  private static final double LEAST_SHOWN = 0.005;

  private final Words words;

  private ReportText(Report report, Paint paint) {
    this.report = report;
    this.paint = paint;
    words = new Words(report.station().brief().units());
  }

  static List<String> lines(Report report, Paint paint) {
    return new ReportText(report, paint).lines();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    Figure height = report.station().figures().get("workingHeight");
    lines.add(verdict(height));
    if (height != null) {
      lines.addAll(SumText.lines(height, words));
    }
    List<Margin> lengths = margins();
    if (!lengths.isEmpty()) {
      lines.add("");
      lengths.forEach(m -> lines.add(marginLine(m)));
    }
    for (Finding finding : report.findings()) {
      lines.add("");
      lines.addAll(findingLines(finding));
    }
    return lines;
  }

  private String verdict(Figure height) {
    long stops = report.count(Severity.STOP);
    long minds = report.count(Severity.MIND);
    String name = report.station().brief().name();
    String verdict =
        stops > 0
            ? paint.stop("do not cut") + ": " + reasons(stops)
            : minds > 0 ? "look before you cut: " + things(minds) + " to mind" : "clear to cut";
    String at =
        height == null
            ? report.station().brief().saw().isPresent()
                ? "no station, only what is built for the saw"
                : "no saw, only panels of your own"
            : "working height "
                + words.length(height.nominal())
                + " ("
                + words.length(height.low())
                + " to "
                + words.length(height.high())
                + ")";
    return paint.strong(name) + ": " + verdict + "; " + at;
  }

  private static String reasons(long count) {
    return count == 1 ? "one reason" : count + " reasons";
  }

  private static String things(long count) {
    return count == 1 ? "one thing" : count + " things";
  }

  private List<Margin> margins() {
    return report.margins();
  }

  private String marginLine(Margin margin) {
    double spare = margin.spare();
    String amount = amount(margin.dimension(), Math.abs(spare));
    // What is printed as 0 is not missing: rounding made it less.
    String end = spare < -LEAST_SHOWN ? paint.stop("missing") : "to spare";
    return "  %12s %s  %s".formatted(amount, end, margin.what());
  }

  private String amount(Dimension dimension, double value) {
    return switch (dimension) {
      case LENGTH -> words.length(value);
      case MASS -> words.mass(value);
      case FORCE -> Words.force(value);
    };
  }

  private List<String> findingLines(Finding finding) {
    String where = Words.some(finding.about());
    String place = finding.at().map(at -> " at " + words.place(at)).orElse("");
    return List.of(
        paint.severity(finding.severity())
            + "  "
            + finding.says()
            + paint.faint("  [" + finding.rule() + "]"),
        "      " + where + place,
        "      " + finding.remedy());
  }
}
