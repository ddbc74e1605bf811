package sawstead.layout.shop;

import java.util.OptionalDouble;

/**
 * Sheets of one kind that are cut up.
 *
 * @param stock name of the sheet or offcut
 * @param count how many
 * @param each price of one, in the user's money; empty when the brief names none
 */
public record CostLine(String stock, int count, OptionalDouble each) {
  /** Price of all; empty when that of one is not known. */
  public OptionalDouble sum() {
    return each.isPresent() ? OptionalDouble.of(each.getAsDouble() * count) : each;
  }
}
