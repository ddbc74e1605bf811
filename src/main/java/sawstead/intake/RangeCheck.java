package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import sawstead.measure.LengthFormat;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;

/**
 * Refuses values outside the range that the schema gives for a key ({@code x-min}, {@code x-max}).
 */
final class RangeCheck {

  /** Limits are told in inches on this mark, rounded inward, so that the limit told is accepted. */
  private static final double MARK = Unit.INCH.millimetres() / 16;

  /** For the last bit of a conversion. */
  private static final double SLACK = 1e-9;

  private final Reading reading;
  private final JsonNode schema;
  private final String path;
  private final int line;
  private final MeasureKind kind;

  RangeCheck(Reading reading, JsonNode schema, String path, int line) {
    this.reading = reading;
    this.schema = schema;
    this.path = path;
    this.line = line;
    this.kind = MeasureKind.of(schema.path("x-unit").asText());
  }

  /** Whether the value is in range; if not, the problem has been noted. */
  boolean accepts(Parsed value) {
    double low = schema.path("x-min").asDouble(Double.NEGATIVE_INFINITY);
    double high = schema.path("x-max").asDouble(Double.POSITIVE_INFINITY);
    if (value.nominal() > high + SLACK) {
      note(
          value,
          is(value)
              + ", more than the "
              + kind.inWords(inward(high, false), reading.units())
              + " that make sense",
          "write at most " + kind.inWords(inward(high, false), reading.units()));
      return false;
    }
    if (value.nominal() < low - SLACK) {
      String fault =
          value.nominal() <= 0 && low > 0
              ? ", and must be more than nothing"
              : ", less than makes sense";
      note(
          value,
          is(value) + fault,
          "write at least " + kind.inWords(inward(low, true), reading.units()));
      return false;
    }
    if (low >= 0 && value.nominal() - value.minus() < -SLACK) {
      note(value, is(value) + ", but its band reaches below nothing", "write a narrower band");
      return false;
    }
    return true;
  }

  private String is(Parsed value) {
    return schema.path("title").asText(path)
        + " is "
        + kind.inWords(value.nominal(), reading.units());
  }

  private double inward(double limit, boolean up) {
    if (kind != MeasureKind.LENGTH || reading.units() == Unit.MM) {
      return limit;
    }
    double marks = limit / MARK;
    return (up ? Math.ceil(marks - SLACK) : Math.floor(marks + SLACK)) * MARK;
  }

  private void note(Parsed value, String what, String remedy) {
    String instead = schema.path("x-instead").asText();
    String all = instead.isEmpty() ? remedy : remedy + ", " + instead;
    reading.problems().add(line, path, what, all + otherUnit(value));
  }

  /** A plain number that would be in range in the other unit was probably meant so. */
  private String otherUnit(Parsed value) {
    if (kind != MeasureKind.LENGTH || value.written() != null) {
      return "";
    }
    Unit other = reading.units() == Unit.MM ? Unit.INCH : Unit.MM;
    double number = value.nominal() / reading.units().millimetres();
    double meant = number * other.millimetres();
    boolean inRange =
        meant >= schema.path("x-min").asDouble() && meant <= schema.path("x-max").asDouble();
    if (!inRange || number == 0) {
      return "";
    }
    String plain = LengthFormat.millimetres().text(number);
    return other == Unit.MM
        ? "; if it is " + plain + " millimetres, write " + plain + " mm"
        : "; if it is " + plain + " inches, write " + plain + " in";
  }
}
