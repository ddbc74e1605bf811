package sawstead.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sawstead.check.Report;
import sawstead.export.report.ReportWriter;

/** {@code check FILE [--json]}: judges the station of a brief and writes nothing. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Says whether a brief's station can be cut, what fits by how much, and what clashes.",
    footer = {"", "Exit codes: 0 fine, 1 do not cut, 2 bad input, 3 a fault of the program."})
final class CheckCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(paramLabel = "FILE", description = "The brief, a YAML file.")
  private Path file;

  @Option(names = "--json", description = "Print the report as JSON.")
  private boolean json;

  CheckCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Refusal, IOException {
    Report report;
    try (Progress progress = Progress.on(streams)) {
      report = Bench.report(file, progress);
    }
    if (json) {
      ReportWriter.write(report, streams.out());
      streams.out().flush();
    } else {
      PrintWriter out = streams.outText();
      ReportText.lines(report, new Paint(streams.terminal())).forEach(out::println);
      out.flush();
    }
    return report.forbidsCutting() ? ExitCode.DO_NOT_CUT : ExitCode.FINE;
  }
}
