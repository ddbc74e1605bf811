package sawstead.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sawstead.layout.Board;
import sawstead.layout.Complaint;
import sawstead.layout.CutRequest;
import sawstead.layout.CutRequestException;
import sawstead.layout.Defect;
import sawstead.layout.Effort;
import sawstead.layout.Kerfs;
import sawstead.layout.Millimetres;
import sawstead.layout.PartListReader;
import sawstead.layout.SawLimits;
import sawstead.layout.Stock;

/** The request of a plain part list, from the options of the command; all text is as typed. */
final class ListRequest {
  private static final String BOARD = "board";

  private final BreakdownOptions options;
  private final List<Complaint> complaints = new ArrayList<>();

  ListRequest(BreakdownOptions options) {
    this.options = options;
  }

  /** What is to be cut, from what. */
  CutRequest of(Path list) throws CutRequestException {
    double edge = number("--trim", options.trim(), 0, 500);
    double blade = number("--kerf", options.kerf(), 0, 20);
    // 685 kg/m3: birch plywood of 18 mm, REF-PLY-10.
    Board board = new Board(BOARD, number("--thickness", options.thickness(), 0.1, 200), 685);
    List<Stock> stock = new ArrayList<>();
    if (options.sheets().isEmpty()) {
      complaints.add(
          new Complaint(
              "option",
              "no sheet is named",
              "--sheet",
              "write length x width in mm, for example --sheet 2440x1220"));
    }
    for (String text : options.sheets()) {
      double[] size = size("--sheet", text, text);
      String name = plain(size[0]) + "x" + plain(size[1]);
      stock.add(Stock.sheet(name, BOARD, size[0], size[1], edge));
    }
    for (String text : options.offcuts()) {
      int equals = text.indexOf('=');
      String name = equals < 1 ? text : text.substring(0, equals);
      double[] size = size("--offcut", text, text.substring(equals + 1));
      stock.add(
          new Stock(
              name, BOARD, size[0], size[1], 1, 0, edge, true, "--offcut " + text, defects(name)));
    }
    unknownDefects(stock);
    stop();
    return new CutRequest(
        List.of(board),
        PartListReader.read(list, BOARD),
        stock,
        Kerfs.both(blade),
        SawLimits.SMALL_SAW);
  }

  /** The defects of one offcut, as typed: {@code rack-3=700,0,100x200}. */
  private List<Defect> defects(String offcut) {
    List<Defect> defects = new ArrayList<>();
    for (String text : options.defects()) {
      if (text.startsWith(offcut + "=")) {
        String[] figures = text.substring(offcut.length() + 1).split("[,xX\u00d7]", -1);
        try {
          defects.add(
              new Defect(
                  Millimetres.parse(figures[0]),
                  Millimetres.parse(figures[1]),
                  Millimetres.parse(figures[2]),
                  Millimetres.parse(figures[3])));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
          complaints.add(
              new Complaint(
                  "option",
                  "--defect is '" + text + "'",
                  "--defect",
                  "write offcut=x,y,length x width in mm, for example rack-3=700,0,100x200"));
        }
      }
    }
    return defects;
  }

  private void unknownDefects(List<Stock> stock) {
    for (String text : options.defects()) {
      if (stock.stream().noneMatch(s -> s.offcut() && text.startsWith(s.name() + "="))) {
        complaints.add(
            new Complaint(
                "option",
                "--defect '" + text + "' is of no offcut",
                "--defect",
                "name the offcut that has it: a whole sheet with a defect is an --offcut too"));
      }
    }
  }

  /** How much the planner tries. */
  Effort effort() throws CutRequestException {
    double nominal = number("--seconds", options.seconds(), 0.001, 3600);
    stop();
    return new Effort(nominal, options.seed(), Effort.USUAL.workers(), options.favour());
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
