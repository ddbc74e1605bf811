package sawstead.layout.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sawstead.check.Words;
import sawstead.layout.Board;
import sawstead.layout.Choice;
import sawstead.layout.CutPlan;
import sawstead.layout.Guide;
import sawstead.layout.Offcut;
import sawstead.layout.SheetPlan;

/**
 * A breakdown in words for the terminal: the verdict first, then cost and what is worth keeping,
 * then the work: the guided saw sheet by sheet, then the table saw setting by setting.
 */
public final class BreakdownText {
  private final Breakdown breakdown;
  private final CutPlan plan;
  private final Words words;
  private final List<String> lines = new ArrayList<>();

  private BreakdownText(Breakdown breakdown) {
    this.breakdown = breakdown;
    this.plan = breakdown.plan();
    this.words = breakdown.words();
  }

  /** The lines. */
  public static List<String> of(Breakdown breakdown) {
    BreakdownText text = new BreakdownText(breakdown);
    text.lines.add(text.verdict());
    text.summary();
    text.sheets();
    text.steps();
    return List.copyOf(text.lines);
  }

  private String verdict() {
    return breakdown.station().brief().name() + ": " + verdict(breakdown);
  }

  /** Sheets used, the proven bound beside them, cuts and settings, in one sentence. */
  public static String verdict(Breakdown breakdown) {
    CutPlan plan = breakdown.plan();
    int old = plan.sheets().size() - plan.newSheets();
    String bound =
        plan.proven()
            ? "proven: no plan needs fewer"
            : "proven: no plan needs fewer than " + plan.lowerBound();
    return count(plan.newSheets(), "sheet", "sheets")
        + (old == 0 ? "" : " and " + count(old, "offcut", "offcuts"))
        + " ("
        + bound
        + "); "
        + count(breakdown.steps().size(), "cut", "cuts")
        + ", "
        + count(plan.settings(), "setting", "settings")
        + " of fence or stop"
        + (plan.interrupted() ? "; stopped early" : "");
  }

  private void summary() {
    if (breakdown.forbidden()) {
      lines.add("do not cut yet: the station has findings that forbid it, see `check`");
    }
    plan.cautions().forEach(caution -> lines.add("mind: " + caution));
    List<CostLine> costs = CostList.of(breakdown);
    lines.add("");
    for (CostLine line : costs) {
      lines.add(
          "  %2d x %s, %s".formatted(line.count(), line.stock(), money(line.sum(), "no price")));
    }
    lines.add("  cost " + CostList.words(costs));
    StringBuilder mass = new StringBuilder();
    CutList.masses(breakdown.station())
        .forEach(
            (unit, kg) ->
                mass.append(mass.length() == 0 ? "" : ", ")
                    .append(unit)
                    .append(' ')
                    .append(words.mass(kg)));
    lines.add("  mass of the panels: " + mass);
    for (Choice choice : plan.choices()) {
      lines.add(
          "  "
              + (choice == plan.choices().get(0) ? "this plan, " : "or ")
              + choice.words(offcut -> size(offcut.length(), offcut.width())));
    }
    if (!plan.offcuts().isEmpty()) {
      lines.add("  worth keeping:");
      for (Offcut offcut : plan.offcuts()) {
        lines.add(
            "    "
                + size(offcut.length(), offcut.width())
                + " of "
                + offcut.stock()
                + ", sheet "
                + offcut.sheet());
      }
    }
  }

  private void sheets() {
    for (int i = 0; i < plan.sheets().size(); i++) {
      SheetPlan sheet = plan.sheets().get(i);
      Board board = breakdown.board(sheet.stock());
      lines.add("");
      lines.add(
          "sheet "
              + (i + 1)
              + ": "
              + sheet.stock()
              + ", "
              + size(sheet.length(), sheet.width())
              + ", "
              + words.length(board.thickness()));
      for (ShopStep step : breakdown.steps(i + 1)) {
        if (step.isSellers()) {
          lines.add("  " + step.cut().order() + ". at the seller's: " + guided(step));
        } else if (step.isMarked()) {
          lines.add("  " + step.cut().order() + ". " + guided(step));
        }
      }
    }
  }

  private void steps() {
    String heading = "";
    for (ShopStep step : breakdown.steps()) {
      if (step.isMarked()) {
        continue;
      }
      String now = heading(step);
      if (!now.equals(heading)) {
        lines.add("");
        lines.add(now);
        heading = now;
      }
      lines.add("  " + step.cut().order() + ". " + table(step));
    }
  }

  private String guided(ShopStep step) {
    String packed = step.cut().guide() == Guide.PACKED_RAIL ? "a strip as thick beside it; " : "";
    return step.work().words()
        + ": "
        + packed
        + "along the "
        + step.cut().along().word()
        + ", "
        + words.length(step.mark())
        + " from its near edge -> "
        + step.near().words()
        + " | "
        + step.far().words();
  }

  private String heading(ShopStep step) {
    return (step.cut().guide() == Guide.FENCE ? "fence at " : "sled, stop at ")
        + words.length(step.cut().setting().orElse(0));
  }

  private String table(ShopStep step) {
    return step.work().words()
        + " ("
        + size(step.work().length(), step.work().width())
        + ") along the "
        + step.cut().along().word()
        + " -> "
        + step.measured().words()
        + " | "
        + step.other().words();
  }

  private String size(double length, double width) {
    return words.length(length) + " x " + words.length(width);
  }

  /** A sum of money, or other words where it is not known. */
  public static String money(OptionalDouble amount, String otherwise) {
    return amount.isPresent()
        ? String.format(Locale.ROOT, "%.2f", amount.getAsDouble())
        : otherwise;
  }

  /** A number and what it counts: {@code 1 panel}, {@code 2 panels}. */
  public static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
