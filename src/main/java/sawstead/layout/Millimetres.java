package sawstead.layout;

import java.math.BigDecimal;

/** Plain millimetres as typed on a command line or in a list. */
public final class Millimetres {
  private static final int LONGEST_TEXT = 40;

  private Millimetres() {}

  /**
   * Reads a decimal number with an optional {@code mm} behind it, whatever the machine's language.
   *
   * @throws NumberFormatException when it is none
   */
  public static double parse(String text) {
    String number = text.strip();
    if (number.endsWith("mm")) {
      number = number.substring(0, number.length() - 2).strip();
    }
    // A very long exponent would cost minutes as an exact decimal.
    if (number.length() > LONGEST_TEXT || number.indexOf('e') >= 0 || number.indexOf('E') >= 0) {
      throw new NumberFormatException("not plain millimetres: " + text);
    }
    return new BigDecimal(number).doubleValue();
  }
}
