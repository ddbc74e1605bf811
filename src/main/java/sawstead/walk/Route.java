package sawstead.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sawstead.intake.BriefSchema;
import sawstead.measure.Unit;
import sawstead.walk.Question.Kind;

/** The questions that the answers so far lead to, in the order in which one walks round a saw. */
final class Route {
  static final String YES = "yes";
  static final String NO = "no";
  static final String NONE = "none";

  private final Answers answers;
  private final List<String> stops = new ArrayList<>();
  private final List<String> titles = new ArrayList<>();
  private final List<Node> nodes = new ArrayList<>();

  private Route(JsonNode schema, Answers answers) {
    this.answers = answers;
    schema
        .path("x-walk-stops")
        .properties()
        .forEach(
            e -> {
              stops.add(e.getKey());
              titles.add(e.getValue().asText());
            });
    section(Node.root(schema));
    nodes.sort(Comparator.comparingInt(n -> stops.indexOf(n.stop())));
  }

  static Route of(Answers answers) {
    return new Route(BriefSchema.expanded(), answers);
  }

  /** All keys that are to be asked as things stand, answered ones among them. */
  List<Node> nodes() {
    return nodes;
  }

  private void section(Node section) {
    section.keys().forEach(this::visit);
  }

  private void visit(Node node) {
    if (!isWanted(node)) {
      return;
    }
    if (node.isSection()) {
      boolean gate = node.isAsked() && node.hasGate();
      if (gate) {
        nodes.add(node);
      }
      if (!gate || answers.written(node.path()).equals(YES)) {
        section(node);
      }
    } else if (node.isList()) {
      list(node);
    } else if (node.isAsked()) {
      nodes.add(node);
    }
  }

  private void list(Node node) {
    if (!node.isAsked()) {
      return;
    }
    nodes.add(node);
    int count = count(answers.written(node.path()));
    for (int k = 0; k < count; k++) {
      Node item = node.item(k);
      if (item.isSection()) {
        section(item);
      } else {
        nodes.add(item);
      }
    }
  }

  /** How many items an answer to a list means; none if it is no number. */
  static int count(String written) {
    return written.matches("[0-9]{1,2}") ? Integer.parseInt(written) : 0;
  }

  private boolean isWanted(Node node) {
    String at = node.conditionPath();
    if (at.isEmpty()) {
      return true;
    }
    String found = answers.written(at);
    return node.conditionWord().equals(NO)
        ? answers.has(at) && !found.equals(YES)
        : found.equals(node.conditionWord());
  }

  /** The question about a key. */
  Question question(Node node) {
    Kind kind = kind(node);
    List<String> choices =
        switch (kind) {
          case GATE -> gateChoices(node);
          case CHOICE -> node.choices();
          default -> List.of();
        };
    int number = stops.indexOf(node.stop());
    String offer = new StandIn(answers).offer(node, kind);
    return new Question(
        node.path(),
        kind,
        new Question.Stop(number + 1, stops.size(), titles.get(number)),
        title(node),
        node.schema().path("description").asText(),
        asks(node, kind, choices, offer),
        choices,
        offer,
        example(node, kind));
  }

  private static Kind kind(Node node) {
    if (node.isSection()) {
      return Kind.GATE;
    }
    if (node.isList()) {
      return Kind.COUNT;
    }
    if (node.isRow()) {
      return Kind.ROW;
    }
    if (!node.choices().isEmpty()) {
      return Kind.CHOICE;
    }
    return node.isMeasure() ? Kind.MEASURE : Kind.TEXT;
  }

  private static String asks(Node node, Kind kind, List<String> choices, String offer) {
    String own = node.schema().path("x-walk-asks").asText();
    if (!own.isEmpty() || kind != Kind.GATE && kind != Kind.COUNT) {
      return own;
    }
    if (kind == Kind.COUNT) {
      return "How many are there?";
    }
    return choices.contains(NONE) || !offer.startsWith("what")
        ? "Is there one?"
        : "Do you measure it now?";
  }

  private static List<String> gateChoices(Node node) {
    List<String> choices = new ArrayList<>(List.of(YES));
    choices.add(node.words().contains(NONE) ? NONE : NO);
    return choices;
  }

  /** Of a list's item with its number, since there are several of them. */
  private static String title(Node node) {
    return node.index().isEmpty()
        ? node.title()
        : node.title() + ", no. " + (node.index().getAsInt() + 1);
  }

  private String example(Node node, Kind kind) {
    Unit unit = answers.unit();
    return switch (kind) {
      case COUNT -> "2";
      case GATE -> YES;
      case ROW -> rowExample(node, unit);
      case CHOICE -> node.choices().get(0);
      case MEASURE, TEXT -> BriefSchema.example(node.schema(), unit);
    };
  }

  private static String rowExample(Node node, Unit unit) {
    int size = node.schema().path("minItems").asInt();
    String one = BriefSchema.example(node.schema().path("items"), unit);
    return size == 2 || one.isEmpty()
        ? "150, 75"
        : String.join(", ", java.util.Collections.nCopies(size, one));
  }
}
