package sawstead.export.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import sawstead.check.Report;

/**
 * Writes a report. The sections are written by one class each; the order of keys is part of the
 * format's looks, not of its meaning.
 */
public final class ReportWriter {
  /** Name and version of the format. */
  public static final String FORMAT = "sawstead-report/1";

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .build();

  private ReportWriter() {}

  /**
   * Writes a report as indented JSON with a line's end after it; the stream stays open.
   *
   * <p>{@code stl} of a body is the path that {@code build} gives its mesh, relative to the folder
   * of the report: {@code stl/<id>.stl}. Hardware has none.
   */
  public static void write(Report report, OutputStream out) throws IOException {
    JsonGenerator generator = FACTORY.createGenerator(out, JsonEncoding.UTF8);
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    generator.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
    Json json = new Json(generator);
    json.open();
    json.text("format", FORMAT);
    json.text("station", report.station().brief().name());
    json.text("slug", report.station().brief().slug());
    json.text("units", report.station().brief().units().key());
    FigureSection.write(report.station(), json);
    BodySection.write(report.station(), json);
    JudgementSection.writeClashes(report, json);
    JudgementSection.writeGaps(report, json);
    MotionSection.write(report, json);
    BuildSection.writeSteps(report.plan(), json);
    BuildSection.writeFasteners(report, json);
    RoutingSection.write(report.station(), json);
    BuildSection.writeExits(report.plan(), json);
    JudgementSection.writeMargins(report, json);
    JudgementSection.writeFindings(report, json);
    json.close();
    generator.writeRaw('\n');
    generator.close();
  }
}
