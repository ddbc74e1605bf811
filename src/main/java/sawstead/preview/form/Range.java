package sawstead.preview.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;
import sawstead.preview.bench.Dial;

/**
 * What a slider may run over: half to one and a half times what is written, a hand's breadth of a
 * length at least, within what the schema accepts; in marks of a rule.
 *
 * @param low mm of a length, else in the unit that is written
 * @param high as {@code low}
 * @param at as {@code low}
 * @param mark between two places of the slider
 * @param rest of what is written, such as {@code ± 1/32} or {@code kg}
 * @param unit of the brief, for a length; empty for another amount
 */
record Range(double low, double high, double at, double mark, String rest, Optional<Unit> unit) {
  private static final double HAND = 100;
  private static final double INCH = 25.4;

  /** Least room of an amount that is no length, in its marks. */
  private static final double MARKS = 4;

  /** A length written to the hundredth comes from a caliper, and is off by little, mm. */
  private static final double NEAR = 2;

  private static final double HUNDREDTHS = 0.02;
  private static final Pattern CALIPER = Pattern.compile("[.][0-9]{2}");

  private static final Pattern PLAIN = Pattern.compile("([-+]?[0-9]+(?:[.][0-9]+)?)([^0-9/]*)");

  /**
   * The range of a slider of a value as written.
   *
   * @param field of the value
   * @param text as written
   * @param unit of the brief
   * @return empty if no slider makes sense: it is no number, or in another unit than the brief's
   */
  static Optional<Range> of(Field field, String text, Unit unit) {
    return of(field, text, unit, 1);
  }

  /**
   * What is tried of a value as written: twice as far as a slider reaches, but never so little that
   * what it measures is as good as gone.
   */
  static Optional<Dial> dial(Field field, String text, Unit unit) {
    return of(field, text, unit, 2)
        .map(
            r -> {
              double least = r.at > 0 && r.low >= 0 ? Math.max(r.low, r.at / 5) : r.low;
              return new Dial.Rule(field.path(), least, r.high, r.at, r.mark, r::text);
            });
  }

  private static Optional<Range> of(Field field, String text, Unit unit, double times) {
    return switch (field.scale()) {
      case NONE -> Optional.empty();
      case LENGTH -> ofLength(text, unit, field, times);
      case AMOUNT -> ofAmount(text, field, 0.5, times);
      case COUNT -> ofAmount(text, field, 1, times);
    };
  }

  private static Optional<Range> ofLength(String text, Unit unit, Field field, double times) {
    int end = Steps.band(text);
    String plain = text.substring(0, end).strip();
    if (!plain.matches("[-0-9./ ]+")) {
      return Optional.empty();
    }
    try {
      double at = LengthText.parse(plain, unit).nominal();
      boolean fine = unit == Unit.MM && CALIPER.matcher(plain).find();
      double hand = Math.min(HAND, (field.max() - field.min()) / 4);
      double reach = times * (fine ? NEAR : Math.max(Math.abs(at) / 2, hand));
      double whole = unit == Unit.MM ? 1 : INCH / 16;
      double small = unit == Unit.MM ? 0.1 : INCH / 32;
      double mark = fine ? HUNDREDTHS : reach < 12 * times ? small : whole;
      String band = end < text.length() ? " " + text.substring(end).strip() : "";
      return about(at, reach, mark, band, Optional.of(unit), field.min(), field.max());
    } catch (AmountFormatException notALength) {
      return Optional.empty();
    }
  }

  private static Optional<Range> ofAmount(String text, Field field, double mark, double times) {
    Matcher matcher = PLAIN.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    double at = Double.parseDouble(matcher.group(1));
    String rest = matcher.group(2);
    // The schema's limits are in its own unit; in another one only their sign holds.
    boolean own = rest.isBlank() || rest.strip().equals(field.unit());
    double min = own ? field.min() : Math.max(field.min(), 0);
    double max = own ? field.max() : Double.POSITIVE_INFINITY;
    double reach = times * Math.max(Math.abs(at) / 2, MARKS * mark);
    return about(at, reach, mark, rest, Optional.empty(), min, max);
  }

  private static Optional<Range> about(
      double at,
      double reach,
      double mark,
      String rest,
      Optional<Unit> unit,
      double min,
      double max) {
    double low = Math.max(min, at - reach);
    double high = Math.min(max, at + reach);
    return low <= at && at <= high && low < high
        ? Optional.of(new Range(low, high, at, mark, rest, unit))
        : Optional.empty();
  }

  /** What the brief says when the thumb is there: the nearest mark, with the rest as it was. */
  String text(double thumb) {
    double marked = Math.max(low, Math.min(high, Math.rint(thumb / mark) * mark));
    return unit.map(
                u ->
                    (u == Unit.MM ? LengthFormat.millimetres() : LengthFormat.inches(32))
                        .text(marked))
            .orElseGet(() -> number(marked))
        + rest;
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(3, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The same, reaching a place a little farther at least. */
  Range reaching(double place) {
    double more = 4 * mark;
    return new Range(
        place < low ? place - more : low, place > high ? place + more : high, at, mark, rest, unit);
  }

  /** Whether a slider of this range may stay as it is for another value of the same kind. */
  boolean holds(Range fresh) {
    return unit.equals(fresh.unit) && rest.equals(fresh.rest) && fresh.at > low && fresh.at < high;
  }
}
