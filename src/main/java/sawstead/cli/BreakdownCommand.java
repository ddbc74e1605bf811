package sawstead.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sawstead.layout.Board;
import sawstead.layout.Complaint;
import sawstead.layout.CutPlan;
import sawstead.layout.CutPlanText;
import sawstead.layout.CutPlanWriter;
import sawstead.layout.CutPlanner;
import sawstead.layout.CutRequest;
import sawstead.layout.CutRequestException;
import sawstead.layout.Effort;
import sawstead.layout.Kerfs;
import sawstead.layout.Millimetres;
import sawstead.layout.PartListReader;
import sawstead.layout.SawLimits;
import sawstead.layout.Stock;

/** Lays out a plain part list on sheets: {@code breakdown LIST.csv --sheet 2440x1220}. */
@Command(
    name = "breakdown",
    mixinStandardHelpOptions = true,
    description = "Lays out a part list on sheets and says which cuts free the parts, in order.",
    footer = {
      "",
      "The list is CSV: part,length,width,quantity,grain (mm; grain along, across or free).",
      "Same list, same seed, same plan. Exit codes: 0 fine, 2 bad input."
    })
public final class BreakdownCommand implements Callable<Integer> {
  private static final String BOARD = "board";
  private static final int BAD_INPUT = 2;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "LIST.csv", description = "The parts to cut.")
  private Path list;

  @Option(
      names = "--sheet",
      required = true,
      paramLabel = "LxW",
      description = "Size of a sheet, grain along L, for example 2440x1220. May be repeated.")
  private List<String> sheets;

  @Option(
      names = "--offcut",
      paramLabel = "NAME=LxW",
      description = "An offcut at hand, used before a new sheet. May be repeated.")
  private List<String> offcuts = List.of();

  @Option(names = "--kerf", paramLabel = "MM", description = "Width of a cut (${DEFAULT-VALUE}).")
  private String kerf = "3.2";

  @Option(
      names = "--trim",
      paramLabel = "MM",
      description = "What is cut off each factory edge, the blade included (${DEFAULT-VALUE}).")
  private String trim = "0";

  @Option(
      names = "--thickness",
      paramLabel = "MM",
      description = "Thickness, for the mass of what is lifted (${DEFAULT-VALUE}).")
  private String thickness = "18";

  @Option(
      names = "--seconds",
      paramLabel = "S",
      description = "How long to search, counted in work (${DEFAULT-VALUE}).")
  private String seconds = "1";

  @Option(names = "--seed", paramLabel = "N", description = "Seed (${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(names = "--json", description = "Print the plan as JSON.")
  private boolean json;

  private final List<Complaint> complaints = new ArrayList<>();

  @Override
  public Integer call() {
    PrintWriter progress = System.console() == null ? null : spec.commandLine().getErr();
    try (SearchWatch watch = new SearchWatch(progress)) {
      CutPlan plan = CutPlanner.plan(request(), effort(), watch);
      PrintWriter out = spec.commandLine().getOut();
      out.print(json ? CutPlanWriter.json(plan) : CutPlanText.of(plan));
      out.flush();
      return 0;
    } catch (CutRequestException e) {
      PrintWriter err = spec.commandLine().getErr();
      for (Complaint complaint : e.complaints()) {
        err.println("stop: " + complaint.what());
        err.println("  at " + complaint.where());
        err.println("  " + complaint.remedy());
      }
      err.flush();
      return BAD_INPUT;
    }
  }

  private CutRequest request() throws CutRequestException {
    double edge = number("--trim", trim, 0, 500);
    double blade = number("--kerf", kerf, 0, 20);
    // 685 kg/m3: birch plywood of 18 mm, REF-PLY-10.
    Board board = new Board(BOARD, number("--thickness", thickness, 0.1, 200), 685);
    List<Stock> stock = new ArrayList<>();
    for (String text : sheets) {
      double[] size = size("--sheet", text, text);
      String name = plain(size[0]) + "x" + plain(size[1]);
      stock.add(Stock.sheet(name, BOARD, size[0], size[1], edge));
    }
    for (String text : offcuts) {
      int equals = text.indexOf('=');
      String name = equals < 1 ? text : text.substring(0, equals);
      double[] size = size("--offcut", text, text.substring(equals + 1));
      stock.add(new Stock(name, BOARD, size[0], size[1], 1, 0, edge, true, "--offcut " + text));
    }
    stop();
    return new CutRequest(
        List.of(board),
        PartListReader.read(list, BOARD),
        stock,
        Kerfs.both(blade),
        SawLimits.SMALL_SAW);
  }

  private Effort effort() throws CutRequestException {
    double nominal = number("--seconds", seconds, 0.001, 3600);
    stop();
    return new Effort(nominal, seed, Effort.USUAL.workers());
  }

  private void stop() throws CutRequestException {
    if (!complaints.isEmpty()) {
      throw new CutRequestException(complaints);
    }
  }

  private double number(String option, String text, double least, double most) {
    try {
      double value = Millimetres.parse(text);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException e) {
      // said below, together with numbers out of range
    }
    complaints.add(
        new Complaint(
            "option",
            option + " is '" + text + "'",
            option,
            String.format(
                Locale.ROOT,
                "write a number from %s to %s with a decimal point",
                plain(least),
                plain(most))));
    return least;
  }

  private static String plain(double value) {
    return new java.math.BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  private double[] size(String option, String whole, String text) {
    String[] sides = text.toLowerCase(Locale.ROOT).replace('\u00d7', 'x').split("x", -1);
    if (sides.length == 2) {
      try {
        return new double[] {Millimetres.parse(sides[0]), Millimetres.parse(sides[1])};
      } catch (NumberFormatException e) {
        // said below, together with sizes that have not two sides
      }
    }
    complaints.add(
        new Complaint(
            "option",
            option + " is '" + whole + "'",
            option,
            "write length x width in mm, for example "
                + (option.equals("--offcut") ? "rack-3=800x600" : "2440x1220")));
    return new double[] {1, 1};
  }
}
