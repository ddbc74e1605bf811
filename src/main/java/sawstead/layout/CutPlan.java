package sawstead.layout;

import java.util.List;

/**
 * A finished cut plan.
 *
 * @param lowerBound proven: no plan needs fewer new sheets
 * @param newSheets sheets used that are not offcuts
 * @param cost total price of the stock used, in the user's money
 * @param sheets what is cut, offcuts included
 * @param settings how often fence or stop is set
 * @param offcuts what is worth keeping, largest first
 * @param cautions cuts for which no safe way within the limits was found, in words; empty when all
 *     cuts keep the rules
 * @param choices figures of this plan, then of others that trade waste for labour
 * @param interrupted whether the search was stopped early
 */
public record CutPlan(
    int lowerBound,
    int newSheets,
    double cost,
    List<SheetPlan> sheets,
    int settings,
    List<Offcut> offcuts,
    List<String> cautions,
    List<Choice> choices,
    boolean interrupted) {
  public CutPlan {
    sheets = List.copyOf(sheets);
    offcuts = List.copyOf(offcuts);
    cautions = List.copyOf(cautions);
    choices = List.copyOf(choices);
  }

  CutPlan withChoices(List<Choice> all) {
    return new CutPlan(
        lowerBound, newSheets, cost, sheets, settings, offcuts, cautions, all, interrupted);
  }

  /** Whether the number of new sheets is proven least. */
  public boolean proven() {
    return newSheets == lowerBound;
  }
}
