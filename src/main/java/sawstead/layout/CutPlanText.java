package sawstead.layout;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A plan in words for the terminal: the verdict first, then sheet by sheet. */
public final class CutPlanText {
  private CutPlanText() {}

  /** The plan as lines of text. */
  public static String of(CutPlan plan) {
    StringBuilder text = new StringBuilder();
    text.append(verdict(plan)).append('\n');
    plan.cautions().forEach(caution -> text.append("mind: ").append(caution).append('\n'));
    int number = 0;
    for (SheetPlan sheet : plan.sheets()) {
      text.append('\n').append(++number).append(": ").append(sheet.stock()).append(", ");
      text.append(size(sheet.length(), sheet.width())).append('\n');
      pieces(text, sheet.pieces());
      sheet.cuts().forEach(cut -> text.append("  ").append(line(cut)).append('\n'));
    }
    if (!plan.offcuts().isEmpty()) {
      text.append("\nleft over\n");
      for (Offcut offcut : plan.offcuts()) {
        text.append("  ").append(size(offcut.length(), offcut.width()));
        text.append(" from ").append(offcut.sheet()).append('\n');
      }
    }
    text.append(choices(plan));
    return text.toString();
  }

  private static String choices(CutPlan plan) {
    StringBuilder text = new StringBuilder();
    if (!plan.choices().isEmpty()) {
      text.append("\nwaste or labour\n");
    }
    for (Choice choice : plan.choices()) {
      text.append("  ").append(choice == plan.choices().get(0) ? "this plan, " : "");
      text.append(choice.words(offcut -> size(offcut.length(), offcut.width()))).append('\n');
    }
    return text.toString();
  }

  private static String verdict(CutPlan plan) {
    String sheets = plan.newSheets() + (plan.newSheets() == 1 ? " sheet" : " sheets");
    int fromOffcuts = plan.sheets().size() - plan.newSheets();
    String offcuts = fromOffcuts == 0 ? "" : " and " + fromOffcuts + " from offcuts";
    String bound =
        plan.proven()
            ? "proven: no plan needs fewer"
            : "proven: no plan needs fewer than " + plan.lowerBound();
    int cuts = plan.sheets().stream().mapToInt(s -> s.cuts().size()).sum();
    return sheets
        + offcuts
        + " ("
        + bound
        + "); "
        + cuts
        + (cuts == 1 ? " cut, " : " cuts, ")
        + plan.settings()
        + (plan.settings() == 1 ? " setting" : " settings")
        + (plan.interrupted() ? "; stopped early" : "");
  }

  private static void pieces(StringBuilder text, List<PlacedPiece> pieces) {
    Map<String, Integer> counts = new TreeMap<>();
    pieces.stream()
        .sorted(Comparator.comparing(PlacedPiece::part))
        .forEach(
            p ->
                counts.merge(
                    p.part() + " " + size(p.length(), p.width()) + (p.turned() ? " turned" : ""),
                    1,
                    Integer::sum));
    counts.forEach(
        (name, n) -> text.append("  ").append(n).append(" x ").append(name).append('\n'));
  }

  private static String line(Cut cut) {
    String with =
        switch (cut.guide()) {
          case SELLER -> "at the seller's";
          case RAIL -> "guided saw";
          case PACKED_RAIL -> "guided saw, rail on the work and a strip as thick beside it";
          case FENCE -> "table saw, fence at " + Lengths.text(cut.setting().orElse(0));
          case SLED -> "table saw, sled, stop at " + Lengths.text(cut.setting().orElse(0));
        };
    return cut.order()
        + ". "
        + with
        + ", along the "
        + cut.along().word()
        + " at "
        + Lengths.text(cut.at())
        + ", from "
        + Lengths.text(cut.from())
        + " to "
        + Lengths.text(cut.to());
  }

  private static String size(double length, double width) {
    return Lengths.text(length) + " x " + Lengths.text(width);
  }
}
