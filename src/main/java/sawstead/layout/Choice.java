package sawstead.layout;

import java.util.Optional;
import java.util.function.Function;

/**
 * One way to trade waste for labour, with its figures.
 *
 * @param favour what it puts first
 * @param newSheets sheets used that are not offcuts
 * @param largest the largest offcut worth keeping; empty when there is none
 * @param settings how often fence or stop is set
 * @param marked cuts along the rail, each of them measured and marked
 * @param cuts all cuts
 */
public record Choice(
    Favour favour, int newSheets, Optional<Offcut> largest, int settings, int marked, int cuts) {
  static Choice of(Favour favour, CutPlan plan) {
    int cuts = 0;
    int marked = 0;
    for (SheetPlan sheet : plan.sheets()) {
      cuts += sheet.cuts().size();
      marked += (int) sheet.cuts().stream().filter(c -> c.guide().tool() == Tool.GUIDED).count();
    }
    Optional<Offcut> largest = plan.offcuts().stream().findFirst();
    return new Choice(favour, plan.newSheets(), largest, plan.settings(), marked, cuts);
  }

  /** One line: {@code little labour: 2 sheets, 14 settings, 20 cuts to mark, 61 in all ...}. */
  public String words(Function<Offcut, String> size) {
    return favour.words()
        + ": "
        + newSheets
        + (newSheets == 1 ? " sheet, " : " sheets, ")
        + settings
        + (settings == 1 ? " setting, " : " settings, ")
        + marked
        + " of "
        + cuts
        + " cuts to mark, "
        + largest.map(offcut -> "largest leftover " + size.apply(offcut)).orElse("no leftover");
  }
}
