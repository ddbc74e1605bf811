package sawstead.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sawstead.measure.LengthFormatException;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;
import sawstead.squaring.Adjustment;
import sawstead.squaring.FeelerGauges;
import sawstead.squaring.FiveCuts;
import sawstead.squaring.Hand;
import sawstead.squaring.Reading;
import sawstead.squaring.SquareAtBlade;
import sawstead.squaring.Squareness;
import sawstead.squaring.StripEnd;
import sawstead.squaring.ThreeFourFive;

/**
 * {@code square}: which way and how far to move a sled's squaring fence, from five cuts; from a
 * triangle or a try square where nothing can be cut.
 */
@Command(
    name = "square",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description =
        "Says which way and how far to move a sled's squaring fence so that it cuts square.",
    footer = {
      "",
      "Five cuts: cut one side of a board, turn it so that the fresh side lies against the fence,",
      "cut again, and so on; the fifth cut takes a strip 20 to 30 mm wide off along the first side.",
      "Measure the strip at both ends: --a 25.40 --b 25.10 --length 500 --screw 600.",
      "Several readings: --a 25.40,25.41,25.40. Lengths may carry a unit: 1.000 in.",
      "A triangle: --along-fence 300 --along-kerf 400 --diagonal 500.2.",
      "A try square at the blade, unplugged: --gap 0.1 --gap-end far --length 180.",
      "Exit codes: 0 fine, 2 bad input."
    })
final class SquareCommand implements Callable<Integer> {
  private final Streams streams;
  private final List<Trouble> troubles = new ArrayList<>();

  @Option(names = "--a", paramLabel = "W", description = "Width of the strip at end A.")
  private String a;

  @Option(names = "--b", paramLabel = "W", description = "Width at its other end.")
  private String b;

  @Option(
      names = "--length",
      paramLabel = "L",
      description = "Length of the strip between the two, or of the blade at the try square.")
  private String length;

  @Option(
      names = "--screw",
      required = true,
      paramLabel = "P",
      description = "From the pivot screw to where the fence is moved: the squaring screw.")
  private String screw;

  @Option(
      names = "--pivot",
      paramLabel = "END",
      description = "End of the fence with the pivot: left or right (${DEFAULT-VALUE}).")
  private String pivot = "left";

  @Option(
      names = "--stays",
      paramLabel = "SIDE",
      description =
          "Side of the blade where the board stays, left (turned clockwise) or right (turned"
              + " counter-clockwise); of the triangle or try square too (${DEFAULT-VALUE}).")
  private String stays = "left";

  @Option(
      names = "--a-end",
      paramLabel = "END",
      description = "Which end is A: near (at the fence) or far (${DEFAULT-VALUE}).")
  private String aEnd = "near";

  @Option(
      names = "--caliper",
      paramLabel = "BAND",
      description = "How far a reading may be off: 0.02 mm for a caliper, 0.5 mm for a tape.")
  private String caliper;

  @Option(
      names = "--board",
      paramLabel = "W",
      description = "Width of a board to tell the error over (300 mm).")
  private String board;

  @Option(
      names = "--leaves",
      paramLabel = "T,...",
      split = ",",
      description = "Leaves of your feeler gauges; a usual set in mm if left out.")
  private List<String> leaves = List.of();

  @Option(names = "--along-fence", paramLabel = "W", description = "Triangle: along the fence.")
  private String alongFence;

  @Option(names = "--along-kerf", paramLabel = "W", description = "Triangle: along the kerf.")
  private String alongKerf;

  @Option(names = "--diagonal", paramLabel = "W", description = "Triangle: between their ends.")
  private String diagonal;

  @Option(names = "--gap", paramLabel = "G", description = "Try square: the gap at the plate.")
  private String gap;

  @Option(names = "--gap-end", paramLabel = "END", description = "Where it is: near or far.")
  private String gapEnd = "far";

  @Option(
      names = "--square-band",
      paramLabel = "G",
      description = "How far the try square may be off over that length (0.05 mm).")
  private String squareBand;

  @Option(names = "--inch", description = "Plain numbers are inches, and so are answers.")
  private boolean inch;

  @Option(names = "--json", description = "Print the figures as JSON, mm and degrees.")
  private boolean json;

  SquareCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() throws Refusal {
    Squareness found = measured();
    double distance = length("--screw", screw, Double.NaN);
    double over = length("--board", board, 300);
    Hand end = word("--pivot", pivot, Hand.class);
    FeelerGauges gauges = gauges();
    stop();
    Adjustment adjustment = Adjustment.of(found, end, distance);
    List<Double> stack = gauges.stack(Math.abs(adjustment.move()));
    SquareText text = new SquareText(unit(), found, adjustment, stack, over);
    PrintWriter out = streams.outText();
    if (json) {
      out.println(text.json());
    } else {
      text.lines().forEach(out::println);
    }
    out.flush();
    return ExitCode.FINE;
  }

  private Squareness measured() throws Refusal {
    boolean triangle = alongFence != null || alongKerf != null || diagonal != null;
    boolean trySquare = gap != null;
    boolean fiveCuts = a != null || b != null;
    int methods = (triangle ? 1 : 0) + (trySquare ? 1 : 0) + (fiveCuts ? 1 : 0);
    if (methods != 1) {
      throw refusal(
          methods == 0 ? "nothing was measured" : "two ways of measuring are mixed",
          "give --a, --b and --length; or --along-fence, --along-kerf and --diagonal; or --gap and"
              + " --length");
    }
    Hand hand = word("--stays", stays, Hand.class);
    try {
      if (triangle) {
        return triangle(hand);
      }
      if (trySquare) {
        return trySquare(hand);
      }
      double band = length("--caliper", caliper, 0.02);
      Reading atA = reading("--a", a, band);
      Reading atB = reading("--b", b, band);
      double strip = length("--length", length, Double.NaN);
      StripEnd end = word("--a-end", aEnd, StripEnd.class);
      stop();
      return new FiveCuts(hand, end, atA, atB, strip).squareness();
    } catch (IllegalArgumentException e) {
      throw refusal(e.getMessage(), "measure again, and look at the units");
    }
  }

  private Squareness triangle(Hand hand) throws Refusal {
    double band = length("--caliper", caliper, 0.5);
    Reading p = reading("--along-fence", alongFence, band);
    Reading q = reading("--along-kerf", alongKerf, band);
    Reading d = reading("--diagonal", diagonal, band);
    stop();
    return new ThreeFourFive(hand, p, q, d).squareness();
  }

  private Squareness trySquare(Hand hand) throws Refusal {
    double wide = gap.trim().equals("0") ? 0 : length("--gap", gap, Double.NaN);
    StripEnd end = word("--gap-end", gapEnd, StripEnd.class);
    double band = length("--caliper", caliper, 0.02);
    double along = length("--length", length, Double.NaN);
    double own = length("--square-band", squareBand, 0.05);
    stop();
    return new SquareAtBlade(hand, end, wide, band, along, own).squareness();
  }

  private FeelerGauges gauges() {
    List<Double> thick = new ArrayList<>();
    for (String leaf : leaves) {
      thick.add(length("--leaves", leaf, Double.NaN));
    }
    if (thick.stream().anyMatch(t -> Double.isNaN(t) || t > 5) || thick.size() > 40) {
      troubles.add(
          new Trouble(
              "a set of feeler gauges has up to 40 leaves of at most 5 mm",
              "square --leaves",
              "write them as 0.05,0.1,0.15"));
      return FeelerGauges.USUAL;
    }
    return thick.isEmpty() ? FeelerGauges.USUAL : new FeelerGauges(thick);
  }

  private Reading reading(String option, String text, double band) {
    List<Double> values = new ArrayList<>();
    for (String one : text == null ? new String[] {""} : text.split(",", -1)) {
      values.add(length(option, one, Double.NaN));
    }
    return values.stream().anyMatch(v -> v.isNaN()) || !(band >= 0)
        ? Reading.of(1, 0)
        : new Reading(values, band);
  }

  /** A length of an option, mm; its fallback when it is not given; a complaint when it is none. */
  private double length(String option, String text, double fallback) {
    if (text == null && !Double.isNaN(fallback)) {
      return fallback;
    }
    try {
      double value = LengthText.parse(text == null ? "" : text.trim(), unit()).nominal();
      if (value > 0 && value <= 1e5) {
        return value;
      }
      troubles.add(
          new Trouble(
              option + " is `" + text + "`, not between 0 and 100 m",
              "square " + option,
              "write a length such as 25.4 or 1 in"));
    } catch (LengthFormatException e) {
      troubles.add(
          new Trouble(
              text == null || text.isBlank() ? option + " is missing" : e.getMessage(),
              "square " + option,
              "write a length such as 25.4 or 1 in"));
    }
    return Double.isNaN(fallback) ? Double.NaN : fallback;
  }

  private <E extends Enum<E>> E word(String option, String text, Class<E> type) {
    List<String> words = new ArrayList<>();
    for (E value : type.getEnumConstants()) {
      String word = value.name().toLowerCase(Locale.ROOT);
      if (word.equals(text)) {
        return value;
      }
      words.add(word);
    }
    troubles.add(
        new Trouble(
            option + " is `" + text + "`",
            "square " + option,
            "write " + String.join(" or ", words)));
    return type.getEnumConstants()[0];
  }

  private Unit unit() {
    return inch ? Unit.INCH : Unit.MM;
  }

  private void stop() throws Refusal {
    if (!troubles.isEmpty()) {
      throw new Refusal(troubles.stream().distinct().toList());
    }
  }

  private static Refusal refusal(String what, String remedy) {
    return new Refusal(List.of(new Trouble(what, "square", remedy)));
  }
}
