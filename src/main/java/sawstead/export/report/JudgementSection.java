package sawstead.export.report;

import java.io.IOException;
import java.util.Optional;
import sawstead.check.Finding;
import sawstead.check.Gap;
import sawstead.check.Margin;
import sawstead.check.Report;
import sawstead.check.Way;

/** {@code clashes}, {@code gaps}, {@code margins} and {@code findings}. */
final class JudgementSection {
  private JudgementSection() {}

  static void writeClashes(Report report, Json json) throws IOException {
    json.objects(
        "clashes",
        report.clashes(),
        clash -> {
          json.text("a", clash.a());
          json.text("b", clash.b());
          json.number("volume", clash.volume());
          json.number("depth", clash.depth());
          json.vec("at", clash.at());
        });
  }

  /** The free way of each envelope along {@code -x} to {@code +z}; null where nothing is near. */
  static void writeGaps(Report report, Json json) throws IOException {
    json.objects(
        "gaps",
        report.gaps(),
        gap -> {
          json.text("id", gap.id());
          for (Way way : Way.values()) {
            write(way, gap.way(way), json);
          }
        });
  }

  private static void write(Way way, Optional<Gap.Free> free, Json json) throws IOException {
    if (free.isEmpty()) {
      json.nothing(way.key());
      return;
    }
    json.openObject(way.key());
    json.number("free", free.get().way());
    json.text("to", free.get().to());
    json.close();
  }

  static void writeMargins(Report report, Json json) throws IOException {
    json.objects("margins", report.margins(), margin -> write(margin, json));
  }

  private static void write(Margin margin, Json json) throws IOException {
    json.text("name", margin.name());
    json.text("what", margin.what());
    json.texts("about", margin.about());
    json.text("unit", margin.dimension().unit());
    json.number("has", margin.has());
    json.number("needs", margin.needs());
    json.number("spare", margin.spare());
  }

  static void writeFindings(Report report, Json json) throws IOException {
    json.objects("findings", report.findings(), finding -> write(finding, json));
  }

  private static void write(Finding finding, Json json) throws IOException {
    json.text("severity", finding.severity().word());
    json.text("rule", finding.rule());
    json.texts("about", finding.about());
    if (finding.at().isPresent()) {
      json.vec("at", finding.at().get());
    } else {
      json.nothing("at");
    }
    json.text("says", finding.says());
    json.text("remedy", finding.remedy());
  }
}
