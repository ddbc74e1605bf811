package sawstead.measure;

import java.math.BigDecimal;

/**
 * Reads one amount, by this grammar (spaces between parts are free; {@code [..]} is optional):
 *
 * <pre>
 *   text     = [sign] amount [band]
 *   amount   = quantity [unit]  |  quantity feet ["-"] quantity [inches]
 *   quantity = decimal  |  digits  |  digits "/" digits  |  digits ("-" | space) digits "/" digits
 *   band     = "+-" side  |  "+" side ["/"] "-" side  |  "-" side ["/"] "+" side
 *   side     = quantity [unit]
 * </pre>
 *
 * A unit on the value holds for the band unless the band has its own. A value without a unit may
 * not have a band with a foreign one: in a file of inches, {@code 18 ± 0.5 mm} could be 18 mm.
 */
final class AmountParser {

  /**
   * Amounts beyond this (mm, degrees, kg, kg/m3) are slips of the pen, and no format writes them.
   */
  private static final double MOST = 1e9;

  private final String original;
  private final String text;
  private final UnitWords words;
  private final UnitWords.Word fileUnit;
  private int at;

  /** What was read: a value in base units, or a bare quantity that still waits for its unit. */
  private record Amount(BigDecimal inBaseUnits, Quantity bare, UnitWords.Word unit) {

    BigDecimal in(UnitWords.Word unitWhenBare) {
      return bare == null ? inBaseUnits : bare.times(unitWhenBare.factor());
    }
  }

  /**
   * A parser for one text.
   *
   * @param fileUnit the unit of plain numbers, or null when the text must name its own
   */
  AmountParser(String original, UnitWords words, UnitWords.Word fileUnit) {
    this.words = words;
    this.fileUnit = fileUnit;
    this.text = AmountText.tidy(original, words);
    this.original = original.strip();
  }

  Parsed parse() {
    boolean negative = take('-');
    if (!negative) {
      take('+');
    }
    skipSpaces();
    Amount value = amount();
    skipSpaces();
    Amount minus = null;
    Amount plus = null;
    boolean hasBand = at < text.length() && (peek() == '+' || peek() == '-');
    if (text.startsWith("+-", at)) {
      at += 2;
      minus = side();
      plus = minus;
    } else if (take('+')) {
      plus = side();
      minus = otherSide('-');
    } else if (take('-')) {
      minus = side();
      plus = otherSide('+');
    }
    skipSpaces();
    if (at < text.length()) {
      throw words.refuse("`" + text.substring(at) + "` of `" + original + "` cannot be read");
    }
    UnitWords.Word unit = unitOf(value, minus, plus);
    double nominal = finite(value.in(unit));
    if (!hasBand) {
      return new Parsed(negative ? 0 - nominal : nominal, 0, 0, false, written(value));
    }
    UnitWords.Word bandUnit = firstUnit(minus, plus, unit);
    return new Parsed(
        negative ? 0 - nominal : nominal,
        finite(minus.in(bandUnit)),
        finite(plus.in(bandUnit)),
        true,
        written(value));
  }

  private Unit written(Amount value) {
    return value.unit() == null ? null : value.unit().system();
  }

  /** The unit of the value: its own, else that of the file. */
  private UnitWords.Word unitOf(Amount value, Amount minus, Amount plus) {
    if (value.unit() != null) {
      return value.unit();
    }
    if (fileUnit == null) {
      throw words.refuse("`" + original + "` has no unit, and a plain number could be any");
    }
    UnitWords.Word ofBand = firstUnit(minus, plus, fileUnit);
    if (ofBand.factor().compareTo(fileUnit.factor()) != 0) {
      throw words.refuse(
          "the band of `" + original + "` has a unit, but the value itself has none",
          "write the unit after the value too, as in 18 mm ± 0.5 mm");
    }
    return fileUnit;
  }

  private static UnitWords.Word firstUnit(Amount minus, Amount plus, UnitWords.Word otherwise) {
    if (minus != null && minus.unit() != null) {
      return minus.unit();
    }
    return plus != null && plus.unit() != null ? plus.unit() : otherwise;
  }

  private Amount side() {
    skipSpaces();
    return amount();
  }

  private Amount otherSide(char sign) {
    skipSpaces();
    take('/');
    skipSpaces();
    if (!take(sign)) {
      throw words.refuse(
          "the band of `" + original + "` has one side only",
          "write both, as in 19 +0.5/-0.2; a mixed number has no spaces round its hyphen: 34-3/4");
    }
    return side();
  }

  private Amount amount() {
    Quantity first = quantity();
    int afterNumber = at;
    skipSpaces();
    UnitWords.Word unit = unit();
    if (unit == null) {
      at = afterNumber;
      return new Amount(null, first, null);
    }
    BigDecimal value = first.times(unit.factor());
    int afterUnit = at;
    if (unit.smaller() != null) {
      if (!take('-')) {
        skipSpaces();
      }
      if (at < text.length() && AmountText.isDigit(peek())) {
        return new Amount(value.add(smallerPart(unit)), null, unit);
      }
    }
    at = afterUnit;
    return new Amount(value, null, unit);
  }

  /** The inches after feet, the ounces after pounds: their unit may be left out, not be another. */
  private BigDecimal smallerPart(UnitWords.Word larger) {
    Quantity second = quantity();
    int afterNumber = at;
    skipSpaces();
    UnitWords.Word wanted = words.word(larger.smaller()).orElseThrow();
    UnitWords.Word unit = unit();
    if (unit == null) {
      at = afterNumber;
    } else if (unit.factor().compareTo(wanted.factor()) != 0) {
      throw words.refuse("`" + original + "` has two parts in units that do not go together");
    }
    return second.times(wanted.factor());
  }

  private Quantity quantity() {
    int start = at;
    String digits = digits();
    if (at + 1 < text.length() && peek() == '.' && AmountText.isDigit(text.charAt(at + 1))) {
      at++;
      digits();
      return new Quantity(new BigDecimal(text.substring(start, at)), BigDecimal.ONE);
    }
    if (digits.isEmpty()) {
      throw words.refuse("`" + original + "` cannot be read as " + words.kind());
    }
    BigDecimal whole = new BigDecimal(digits);
    if (atFraction()) {
      return fraction(BigDecimal.ZERO, whole);
    }
    int afterWhole = at;
    boolean hyphen = take('-');
    if (!hyphen) {
      skipSpaces();
    }
    String numerator = at > afterWhole ? digits() : "";
    if (!numerator.isEmpty() && atFraction()) {
      return fraction(whole, new BigDecimal(numerator));
    }
    if (!numerator.isEmpty()) {
      throw words.refuse(
          "`" + original + "` has two numbers that make no fraction",
          "write one number, or a mixed number such as 34-3/4");
    }
    at = afterWhole;
    return new Quantity(whole, BigDecimal.ONE);
  }

  private boolean atFraction() {
    return at + 1 < text.length() && peek() == '/' && AmountText.isDigit(text.charAt(at + 1));
  }

  private Quantity fraction(BigDecimal whole, BigDecimal numerator) {
    at++;
    BigDecimal denominator = new BigDecimal(digits());
    if (denominator.signum() == 0) {
      throw words.refuse("`" + original + "` divides by zero");
    }
    if (whole.signum() > 0 && numerator.compareTo(denominator) >= 0) {
      throw words.refuse(
          "`" + original + "` has a fraction of one or more after a whole number",
          "write it as one number, such as 35-1/4 for 34-5/4");
    }
    return new Quantity(whole.multiply(denominator).add(numerator), denominator);
  }

  /** The unit at this place, or null if there is none. */
  private UnitWords.Word unit() {
    int start = at;
    letters();
    if (at > start && at + 1 < text.length() && peek() == '/' && isLetterAt(at + 1)) {
      at++;
      letters();
      if (!take('3')) {
        take('³');
      }
    }
    if (at == start && at < text.length() && "\"'°".indexOf(peek()) >= 0) {
      at++;
    }
    if (at == start) {
      return null;
    }
    String word = text.substring(start, at);
    take('.');
    return words
        .word(word)
        .orElseThrow(
            () ->
                words.refuse(
                    "`" + word + "` of `" + original + "` is no unit of " + words.kind(),
                    "use " + words.known() + ", " + words.example()));
  }

  private void letters() {
    while (at < text.length() && isLetterAt(at)) {
      at++;
    }
  }

  private boolean isLetterAt(int index) {
    return Character.isLetter(text.charAt(index));
  }

  private double finite(BigDecimal value) {
    double number = value.doubleValue();
    if (!(Math.abs(number) <= MOST)) {
      throw words.refuse("`" + original + "` is far beyond anything in a workshop");
    }
    return number;
  }

  private String digits() {
    int start = at;
    while (at < text.length() && AmountText.isDigit(peek())) {
      at++;
    }
    return text.substring(start, at);
  }

  private char peek() {
    return text.charAt(at);
  }

  private boolean take(char sign) {
    if (at < text.length() && peek() == sign) {
      at++;
      return true;
    }
    return false;
  }

  private void skipSpaces() {
    while (take(' ')) {
      continue;
    }
  }
}
