package sawstead.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sawstead.check.Report;
import sawstead.export.ExportException;
import sawstead.export.FileName;
import sawstead.export.OutputFolder;
import sawstead.layout.Complaint;
import sawstead.layout.CutPlan;
import sawstead.layout.CutPlanText;
import sawstead.layout.CutPlanWriter;
import sawstead.layout.CutPlanner;
import sawstead.layout.CutRequest;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.layout.sheet.BreakdownFiles;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.BreakdownText;

/**
 * Lays out the panels of a brief on its sheets, or a plain part list: {@code breakdown FILE.yaml},
 * {@code breakdown LIST.csv --sheet 2440x1220}.
 */
@Command(
    name = "breakdown",
    mixinStandardHelpOptions = true,
    description = "Lays out panels on sheets and says which cuts free them, in order.",
    footer = {
      "",
      "A brief (.yaml) says its own sheets, offcuts, kerfs and limits. A list (.csv) is",
      "part,length,width,quantity,grain (mm; grain along, across or free) and needs --sheet.",
      "Same input, same seed, same plan.",
      "Exit codes: 0 fine, 1 do not cut this station, 2 bad input, 3 a fault of the program."
    })
public final class BreakdownCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "A brief (.yaml) or a part list (.csv).")
  private Path file;

  @Mixin private BreakdownOptions options;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "For a brief: the folder for lists, drawings and shop sheet.")
  private Path folder;

  @Option(names = "--json", description = "Print the plan as JSON.")
  private boolean json;

  @Override
  public Integer call() throws Refusal {
    String name = file.toString().toLowerCase(Locale.ROOT);
    try {
      return name.endsWith(".yaml") || name.endsWith(".yml") ? brief() : list();
    } catch (CutRequestException e) {
      PrintWriter err = spec.commandLine().getErr();
      for (Complaint complaint : e.complaints()) {
        err.println("stop: " + complaint.what());
        err.println("  at " + complaint.where());
        err.println("  " + complaint.remedy());
      }
      err.flush();
      return ExitCode.BAD_INPUT;
    }
  }

  private PrintWriter watcher() {
    return System.console() == null ? null : spec.commandLine().getErr();
  }

  private int list() throws CutRequestException {
    if (folder != null) {
      throw complaint("--out is for briefs", "--out", "use --json > plan.json for a list");
    }
    ListRequest request = new ListRequest(options);
    CutRequest asked = request.of(file);
    Effort effort = request.effort();
    try (SearchWatch watch = new SearchWatch(watcher())) {
      print(CutPlanner.plan(asked, effort, watch));
    }
    return ExitCode.FINE;
  }

  private int brief() throws CutRequestException, Refusal {
    if (!options.ofLists().isEmpty()) {
      throw complaint(
          "a brief says its own sheets and kerfs: " + String.join(", ", options.ofLists()),
          file.toString(),
          "write them under `stock` and `cutting`, or give a part list (.csv)");
    }
    Effort effort = new ListRequest(options).effort();
    Report report;
    try (Progress progress =
        Progress.on(spec.commandLine().getErr(), watcher() != null, Progress.PATIENCE_MILLIS)) {
      report = Bench.report(file, progress);
    }
    Breakdown breakdown;
    try (SearchWatch watch = new SearchWatch(watcher())) {
      breakdown = Bench.breakdown(file, report, effort, watch);
    }
    if (folder != null) {
      write(breakdown);
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(CutPlanWriter.json(breakdown.plan()));
    } else {
      BreakdownText.of(breakdown).forEach(out::println);
      if (folder != null) {
        out.println();
        out.println("written: " + folder);
      }
    }
    out.flush();
    return breakdown.forbidden() ? ExitCode.DO_NOT_CUT : ExitCode.FINE;
  }

  private void write(Breakdown breakdown) throws Refusal {
    try {
      OutputFolder.at(folder)
          .write(
              draft -> BreakdownFiles.write(breakdown, name -> draft.open(FileName.parse(name))));
    } catch (ExportException e) {
      throw new Refusal(List.of(new Trouble(e.what(), e.where(), e.remedy())));
    }
  }

  private void print(CutPlan plan) {
    PrintWriter out = spec.commandLine().getOut();
    out.print(json ? CutPlanWriter.json(plan) : CutPlanText.of(plan));
    out.flush();
  }

  private static CutRequestException complaint(String what, String where, String remedy) {
    return new CutRequestException(new Complaint("option", what, where, remedy));
  }
}
