package sawstead.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.intake.BriefSchema;
import sawstead.measure.AmountFormatException;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Parsed;
import sawstead.measure.Unit;
import sawstead.walk.Question.Kind;

/**
 * What may stand in for an answer: what is typical for the kind of saw, in proportion to what was
 * measured already. The typical values are common practice, no source.
 */
final class StandIn {
  /** Tried one after the other, until the reader of briefs finds no fault. */
  static final double[] SCALES = {1, 0.5, 0.25, 0.1, 2, 4, 0.02, -0.25, -1};

  /** How far a value may be off that was only scaled from another, as a share of it. */
  private static final double SCALED_BAND = 0.05;

  private final Answers answers;

  StandIn(Answers answers) {
    this.answers = answers;
  }

  /** What is offered to be agreed to, in words; empty if the question has to be answered. */
  String offer(Node node, Kind kind) {
    JsonNode schema = node.schema();
    if (schema.has("default") && !node.isList()) {
      return schema.path("default").asText();
    }
    if (schema.has("x-default-from")) {
      return schema.path("x-default-from").asText();
    }
    if (kind == Kind.GATE) {
      return typical(node).orElseGet(() -> absent(node));
    }
    if (kind == Kind.COUNT) {
      boolean usual = !schema.path("default").isEmpty() || node.required();
      return typical(node).orElse(usual ? "what is usual" : "none");
    }
    if (kind == Kind.CHOICE || kind == Kind.TEXT) {
      return written(node, 1).orElse("");
    }
    return node.mustBeWritten() ? "" : "left to the design";
  }

  /** What agreeing to a question about a thing as a whole means where none is typical. */
  private static String absent(Node node) {
    if (node.words().contains(Answer.UNKNOWN)) {
      return "what is typical";
    }
    if (node.schema().has("x-walk-asks")) {
      return node.words().contains(Route.NONE) ? Route.NONE : Route.NO;
    }
    return "left to the design";
  }

  /**
   * What the brief says when nobody knows.
   *
   * @param scale how much more or less than usual
   * @return empty if nothing can stand in
   */
  Optional<String> written(Node node, double scale) {
    if (!node.isMeasure()) {
      return typical(node).map(t -> numbered(node, t)).or(() -> named(node));
    }
    return typical(node).map(t -> measure(node, t, scale));
  }

  /** A name for what has none: what it is, and its number. */
  private static Optional<String> named(Node node) {
    return node.isText() && node.required() && node.index().isPresent()
        ? Optional.of(numbered(node, what(node)))
        : Optional.empty();
  }

  private static String what(Node node) {
    String title = BriefSchema.at(Node.around(node.path())).path("title").asText();
    return title.matches("[a-z][a-z -]*") ? title.replace(' ', '-') : "thing";
  }

  private static String numbered(Node node, String word) {
    boolean named = node.key().equals("name") || node.key().equals("id");
    return named && node.isText() && node.index().isPresent()
        ? word + "-" + (node.index().getAsInt() + 1)
        : word;
  }

  private String measure(Node node, String typical, double scale) {
    if (!node.schema().path("x-unit").asText().equals("mm")) {
      return typical;
    }
    Unit unit = answers.unit();
    Parsed usual = LengthText.parse(typical, unit);
    double nominal = usual.nominal() * ratio(node) * scale;
    double low = node.schema().path("x-min").asDouble(Double.NEGATIVE_INFINITY);
    double high = node.schema().path("x-max").asDouble(Double.POSITIVE_INFINITY);
    nominal = Math.max(low, Math.min(high, turned(node, nominal)));
    boolean scaled = scale != 1 || ratio(node) != 1 || !node.schema().has("x-typical");
    return rounded(node, nominal, Math.max(usual.plus(), scaled ? bandOf(nominal) : 0));
  }

  private static double bandOf(double scaled) {
    return Math.abs(scaled) * SCALED_BAND;
  }

  /**
   * A length that may stand in where nothing typical goes with what was answered before.
   *
   * @param share of the range that the schema accepts, 0 to 1
   * @return empty if it is no length with a range
   */
  Optional<String> between(Node node, double share) {
    JsonNode schema = node.schema();
    if (!schema.path("x-unit").asText().equals("mm")
        || !schema.has("x-min")
        || !schema.has("x-max")) {
      return Optional.empty();
    }
    double low = schema.path("x-min").asDouble();
    double nominal = low + share * (schema.path("x-max").asDouble() - low);
    return Optional.of(rounded(node, nominal, bandOf(nominal)));
  }

  private String rounded(Node node, double nominal, double band) {
    double low = node.schema().path("x-min").asDouble(Double.NEGATIVE_INFINITY);
    double high = node.schema().path("x-max").asDouble(Double.POSITIVE_INFINITY);
    Unit unit = answers.unit();
    LengthFormat format = unit == Unit.MM ? LengthFormat.millimetres() : LengthFormat.inches(16);
    double mark = unit == Unit.MM ? 1 : 25.4 / 16;
    double rounded = Math.rint(nominal / mark) * mark;
    rounded = rounded < low || rounded > high ? nominal : rounded;
    double room = Math.min(rounded - low, high - rounded);
    double wide = Math.max(0, Math.min(Math.rint(band / mark) * mark, room));
    return format.withUnit(rounded) + " \u00b1 " + format.withUnit(Math.floor(wide / mark) * mark);
  }

  /** Every second one of a list lies on the other side. */
  private static double turned(Node node, double nominal) {
    if (!node.schema().path("x-typical-turns").asBoolean()) {
      return nominal;
    }
    int number = node.index().orElse(0);
    return number % 2 == 0 ? nominal : -nominal;
  }

  /** How much larger than typical the thing is that this one goes by. */
  private double ratio(Node node) {
    String other = node.schema().path("x-typical-of").asText();
    String said = answers.written(other);
    if (other.isEmpty() || said.isEmpty()) {
      return 1;
    }
    JsonNode schema = BriefSchema.expanded();
    for (String key : other.split("\\.")) {
      schema = schema.path("properties").path(key);
    }
    try {
      Node of = new Node(other, "", schema, true, Node.NEVER);
      double usual = LengthText.parse(typical(of).orElseThrow(), answers.unit()).nominal();
      return LengthText.parse(said, answers.unit()).nominal() / usual;
    } catch (AmountFormatException notALength) {
      return 1;
    }
  }

  /** What is typical for the kind of saw, as the schema writes it. */
  private Optional<String> typical(Node node) {
    JsonNode typical = node.schema().path("x-typical");
    if (typical.isEmpty()) {
      // A key that nobody has said what is typical for: its example is better than no answer.
      JsonNode example = node.schema().path("examples").path(0);
      return node.isMeasure() && node.required() && example.isTextual()
          ? Optional.of(example.asText())
          : Optional.empty();
    }
    int column = Math.max(0, kinds().indexOf(answers.written("saw.like")));
    return Optional.of(typical.path(Math.min(column, typical.size() - 1)).asText());
  }

  private static List<String> kinds() {
    List<String> kinds = new ArrayList<>();
    BriefSchema.expanded()
        .at("/properties/saw/properties/like/enum")
        .forEach(k -> kinds.add(k.asText()));
    return kinds;
  }
}
