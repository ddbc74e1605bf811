package sawstead.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import sawstead.check.Words;
import sawstead.measure.LengthFormat;
import sawstead.measure.Unit;
import sawstead.station.Figure;
import sawstead.station.Term;

/**
 * A sum as one would write it on a board: {@code 4 casters + 23/32 base + 19-9/16 leg = 24-9/32
 * in}. Where fractions are only the nearest ones, a second line has the millimetres.
 */
final class SumText {
  /** Rounding that a fraction may hide before the millimetres are told as well, mm. */
  private static final double EXACT = 0.02;

  private SumText() {}

  static List<String> lines(Figure figure, Words words) {
    List<String> lines = new ArrayList<>();
    String unit = words.unit() == Unit.MM ? "mm" : "in";
    lines.add(
        "  "
            + sum(figure, t -> words.bare(Math.abs(t.value())))
            + words.bare(figure.nominal())
            + " "
            + unit);
    if (words.unit() == Unit.INCH && figure.sum().stream().anyMatch(SumText::isRounded)) {
      LengthFormat mm = LengthFormat.millimetres();
      lines.add(
          "  nearest 1/32; "
              + sum(figure, t -> mm.text(Math.abs(t.value())))
              + mm.text(figure.nominal())
              + " mm");
    }
    return lines;
  }

  private static boolean isRounded(Term term) {
    return Math.abs(LengthFormat.of(Unit.INCH).residual(term.value())) > EXACT;
  }

  private static String sum(Figure figure, Function<Term, String> amount) {
    String terms =
        figure.sum().stream()
            .map(
                t ->
                    (t.value() < 0 ? "- " : "+ ")
                        + amount.apply(t)
                        + " "
                        + t.label().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(" "));
    return (terms.startsWith("+ ") ? terms.substring(2) : terms) + " = ";
  }
}
