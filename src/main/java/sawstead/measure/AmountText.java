package sawstead.measure;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text made plain before it is read: one sign for each meaning, however it was typed, and a refusal
 * of what cannot be a number at all.
 */
final class AmountText {

  /** Longer text than this is no measurement, and slow to compute with. */
  static final int LONGEST = 80;

  private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d+)");
  private static final Pattern EXPONENT =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)[eE][+-]?\\d+.*");
  private static final Pattern NOT_A_NUMBER =
      Pattern.compile("[+-]?\\.?(nan|inf|infinity|∞)\\b.*|[+-]?∞.*", Pattern.CASE_INSENSITIVE);

  /** Fractions that are one character in Unicode. */
  private static final Map<Character, String> FRACTIONS =
      Map.ofEntries(
          Map.entry('¼', "1/4"),
          Map.entry('½', "1/2"),
          Map.entry('¾', "3/4"),
          Map.entry('⅐', "1/7"),
          Map.entry('⅑', "1/9"),
          Map.entry('⅒', "1/10"),
          Map.entry('⅓', "1/3"),
          Map.entry('⅔', "2/3"),
          Map.entry('⅕', "1/5"),
          Map.entry('⅖', "2/5"),
          Map.entry('⅗', "3/5"),
          Map.entry('⅘', "4/5"),
          Map.entry('⅙', "1/6"),
          Map.entry('⅚', "5/6"),
          Map.entry('⅛', "1/8"),
          Map.entry('⅜', "3/8"),
          Map.entry('⅝', "5/8"),
          Map.entry('⅞', "7/8"));

  private AmountText() {}

  /**
   * The text with plain signs: {@code -} for every minus, {@code "} and {@code '} for primes and
   * curly quotes, {@code +-} for a band, {@code n/d} for fractions.
   *
   * @throws AmountFormatException if it is empty, too long, NaN or infinite, or has a comma or an
   *     exponent
   */
  static String tidy(String original, UnitWords words) {
    if (original == null || original.isBlank()) {
      throw words.refuse("there is no number here");
    }
    if (original.length() > LONGEST) {
      throw words.refuse("this is too long for " + words.kind());
    }
    StringBuilder plain = new StringBuilder();
    for (char sign : original.strip().toCharArray()) {
      append(plain, sign);
    }
    String text = plain.toString().replace("+/-", "+-");
    refuseNonsense(text, words);
    return text;
  }

  private static void append(StringBuilder plain, char sign) {
    String fraction = FRACTIONS.get(sign);
    if (fraction != null) {
      boolean afterDigit = !plain.isEmpty() && isDigit(plain.charAt(plain.length() - 1));
      plain.append(afterDigit ? "-" : "").append(fraction);
      return;
    }
    switch (sign) {
      case '\u2212', '\u2013', '\u2011', '\u2010' -> plain.append('-');
      case '\u2044', '\u2215' -> plain.append('/');
      case '\u2033', '\u201d', '\u201c' -> plain.append('"');
      case '\u2032', '\u2019', '\u2018' -> plain.append('\'');
      case '±' -> plain.append("+-");
      case '\u00a0', '\u202f', '\u2009', '\t' -> plain.append(' ');
      default -> plain.append(sign);
    }
  }

  private static void refuseNonsense(String text, UnitWords words) {
    if (NOT_A_NUMBER.matcher(text).matches()) {
      throw words.refuse("`" + text + "` is not a finite number");
    }
    if (EXPONENT.matcher(text).matches()) {
      throw words.refuse(
          "`" + text + "` is written with an exponent", "write the number out in full");
    }
    Matcher comma = COMMA.matcher(text);
    if (comma.find()) {
      throw words.refuse(
          "`" + text + "` has a comma, which some read as a decimal mark and some do not",
          "write a decimal point, " + comma.replaceAll("$1.$2") + ", or no mark for thousands");
    }
  }

  static boolean isDigit(char sign) {
    return sign >= '0' && sign <= '9';
  }
}
