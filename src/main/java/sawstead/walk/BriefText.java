package sawstead.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import sawstead.intake.BriefSchema;

/**
 * Writes a brief from answers: the keys in the order of the schema, each section with what it is
 * about, each value that was not measured with what stands in for it. What is required but not
 * answered yet is filled in, so that the text can be read at any time.
 */
final class BriefText {
  private static final Set<String> YAML_WORDS =
      Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");

  private final Answers answers;
  private final StandIn standIn;
  private final List<String> lines = new ArrayList<>();

  private BriefText(Answers answers) {
    this.answers = answers;
    this.standIn = new StandIn(answers);
  }

  static String of(Answers answers) {
    BriefText text = new BriefText(answers);
    text.lines.add(
        "# Made by the interview, in the order of the file. What was not measured says so.");
    text.section(Node.root(BriefSchema.expanded()), 0);
    return String.join("\n", text.lines) + "\n";
  }

  private void section(Node section, int indent) {
    section.keys().forEach(node -> key(node, indent));
  }

  private void key(Node node, int indent) {
    if (node.isSection()) {
      subsection(node, indent);
    } else if (node.isList()) {
      list(node, indent);
    } else {
      value(node, indent);
    }
  }

  private void subsection(Node node, int indent) {
    String said = answers.written(node.path());
    boolean gate = node.hasGate();
    if (gate && !said.equals(Route.YES)) {
      if (node.words().contains(said)) {
        add(indent, node.key() + ": " + said);
      }
      return;
    }
    int head = lines.size();
    add(indent, "# " + firstSentence(node.schema()));
    add(indent, node.key() + ":");
    int before = lines.size();
    section(node, indent + 1);
    if (lines.subList(before, lines.size()).stream().allMatch(l -> l.strip().startsWith("#"))) {
      // A section without a key would be read as nothing at all.
      lines.subList(head, lines.size()).clear();
      boolean unknown = node.words().contains(Answer.UNKNOWN) && gate;
      if (gate || node.required()) {
        add(indent, node.key() + ": " + (unknown ? Answer.UNKNOWN : "{}"));
      }
    }
  }

  private void list(Node node, int indent) {
    Optional<Answer> answer = answers.at(node.path());
    int least = node.schema().path("minItems").asInt();
    int count = Route.count(answers.written(node.path()));
    if (answer.isEmpty() || answer.get().written().isEmpty()) {
      if (!node.required()) {
        return;
      }
      count = Math.max(count, least);
    }
    if (count == 0) {
      add(indent, node.key() + ": []");
      return;
    }
    add(indent, "# " + firstSentence(node.schema()));
    add(indent, node.key() + ":");
    for (int k = 0; k < count; k++) {
      Node item = node.item(k);
      if (item.isSection()) {
        add(indent + 1, "- # " + item.title() + " " + (k + 1));
        section(item, indent + 2);
      } else {
        add(indent + 1, "- " + scalar(item, written(item)));
      }
    }
  }

  private void value(Node node, int indent) {
    Optional<Answer> answer = answers.at(node.path());
    String written = written(node);
    if (!written.isEmpty()) {
      add(indent, node.key() + ": " + scalar(node, written) + comment(node, answer));
    } else if (answer.isPresent()) {
      add(
          indent,
          "# " + node.key() + ": not measured, taken as " + standIn.offer(node, kindOf(node)));
    }
  }

  private static Question.Kind kindOf(Node node) {
    return node.isMeasure() ? Question.Kind.MEASURE : Question.Kind.TEXT;
  }

  private String written(Node node) {
    Optional<Answer> answer = answers.at(node.path());
    if (answer.isPresent() || !node.mustBeWritten()) {
      return answer.map(Answer::written).orElse("");
    }
    return node.isRow() ? "0, 0" : standIn.written(node, 1).or(() -> firstChoice(node)).orElse("");
  }

  private static Optional<String> firstChoice(Node node) {
    return node.choices().stream().findFirst();
  }

  private static String comment(Node node, Optional<Answer> answer) {
    if (answer.isEmpty() || !answer.get().isStandIn() || !node.isMeasure()) {
      return "";
    }
    return answer.get().written().equals(Answer.UNKNOWN)
        ? "   # nobody measured it: what is usual, with a wide band"
        : "   # not measured: typical of such a saw; measure it before you cut";
  }

  private static String scalar(Node node, String written) {
    if (node.isRow()) {
      return "[" + String.join(", ", written.split("\\s*,\\s*")) + "]";
    }
    if (node.isMeasure()) {
      return written.matches("unknown|-?[0-9][0-9A-Za-z./\u00b1 -]*") ? written : quoted(written);
    }
    if (node.isText() || node.schema().path("type").isArray()) {
      boolean plain =
          written.matches(
                  "[A-Za-z][A-Za-z0-9 -]*[A-Za-z0-9]|[A-Za-z]|[0-9]+(-[0-9]+)?/[0-9]+|[0-9]+ mm")
              && !YAML_WORDS.contains(written.toLowerCase(Locale.ROOT));
      return plain ? written : quoted(written);
    }
    return written;
  }

  private static String quoted(String text) {
    return "'" + text.replace("'", "''") + "'";
  }

  private static String firstSentence(JsonNode schema) {
    String text = schema.path("description").asText();
    int end = text.indexOf(". ");
    return end < 0 ? text : text.substring(0, end + 1);
  }

  private void add(int indent, String line) {
    lines.add("  ".repeat(indent) + line);
  }
}
