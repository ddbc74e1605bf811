package sawstead.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.check.Report;
import sawstead.export.ExportException;
import sawstead.export.build.BuildWriter;
import sawstead.export.stl.StlForm;

/** {@code build FILE [--out DIR] [--ascii]}: judges the station of a brief and writes its files. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description = "Writes STL and DXF of every panel, the whole station, and the report.",
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
      progress.begin("writing " + target);
      BuildWriter.write(report, target, ascii ? StlForm.TEXT : StlForm.BINARY);
    } catch (ExportException e) {
      throw new Refusal(List.of(new Trouble(e.what(), e.where(), e.remedy())));
    }
    PrintWriter out = streams.outText();
    ReportText.lines(report, new Paint(streams.terminal())).forEach(out::println);
    out.println();
    out.println(
        report.forbidsCutting()
            ? "written to look at, not to cut from: " + target
            : "written: " + target);
    out.flush();
    return report.forbidsCutting() ? ExitCode.DO_NOT_CUT : ExitCode.FINE;
  }
}
