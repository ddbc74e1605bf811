package sawstead.cli;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.book.BuildBook;
import sawstead.check.Report;
import sawstead.export.ExportException;
import sawstead.export.FileName;
import sawstead.export.build.BuildWriter;
import sawstead.export.stl.StlForm;
import sawstead.layout.Complaint;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.layout.sheet.BreakdownFiles;
import sawstead.layout.shop.Breakdown;

/** {@code build FILE [--out DIR] [--ascii]}: judges the station of a brief and writes its files. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description =
        "Writes STL and DXF of every panel, the station, the report, the build book and shop sheet.",
    footer = {
      "",
      "The folder is replaced whole or not at all. Files are written even when a finding forbids",
      "cutting, so that it can be looked at.",
      "Exit codes: 0 fine, 1 do not cut, 2 bad input, 3 a fault of the program."
    })
final class BuildCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(paramLabel = "FILE", description = "The brief, a YAML file.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The folder to write; exports/<name of the station> when left out.")
  private Path folder;

  @Option(names = "--ascii", description = "Write STL as text, not binary.")
  private boolean ascii;

  private List<Complaint> uncut = List.of();

  BuildCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Refusal {
    Report report;
    Path target;
    try (Progress progress = Progress.on(streams)) {
      report = Bench.report(file, progress);
      String slug = report.station().brief().slug();
      target = folder != null ? folder : Path.of("exports", slug);
      progress.begin("planning the cuts");
      Optional<Breakdown> breakdown = breakdown(report);
      progress.begin("writing " + target);
      BuildWriter.write(
          report,
          target,
          ascii ? StlForm.TEXT : StlForm.BINARY,
          draft -> {
            try (OutputStream out = draft.open(FileName.parse(BuildBook.FILE))) {
              BuildBook.write(report, out);
            }
            if (breakdown.isPresent()) {
              BreakdownFiles.write(
                  breakdown.get(), name -> draft.open(FileName.parse("breakdown/" + name)));
            }
          },
          name -> {});
    } catch (ExportException e) {
      throw new Refusal(List.of(new Trouble(e.what(), e.where(), e.remedy())));
    }
    PrintWriter out = streams.outText();
    Paint paint = new Paint(streams.terminal());
    ReportText.lines(report, paint).forEach(out::println);
    out.println();
    for (Complaint complaint : uncut) {
      new Trouble(complaint.what(), complaint.where(), complaint.remedy()).print(out, paint);
    }
    out.println(
        report.forbidsCutting() || !uncut.isEmpty()
            ? "written to look at, not to cut from: " + target
            : "written: " + target);
    out.flush();
    return report.forbidsCutting() || !uncut.isEmpty() ? ExitCode.DO_NOT_CUT : ExitCode.FINE;
  }

  /** The cut plan; none when the panels cannot come from the sheets, which is told at the end. */
  private Optional<Breakdown> breakdown(Report report) {
    if (report.station().boards().isEmpty()) {
      return Optional.empty();
    }
    try (SearchWatch watch = new SearchWatch(null)) {
      return Optional.of(Bench.breakdown(file, report, Effort.USUAL, watch));
    } catch (CutRequestException e) {
      uncut = e.complaints();
      return Optional.empty();
    }
  }
}
