package sawstead.export.build;

import java.io.IOException;
import java.io.OutputStream;
import sawstead.check.Report;
import sawstead.export.Draft;
import sawstead.export.FileName;
import sawstead.export.report.ReportWriter;

/** {@code report.json}: the report, whose {@code stl} paths lead to the files beside it. */
final class ReportExporter implements Exporter {
  private static final FileName NAME = FileName.parse("report.json");

  @Override
  public void write(Report report, Draft folder) throws IOException {
    try (OutputStream out = folder.open(NAME)) {
      ReportWriter.write(report, out);
    }
  }
}
