package sawstead.walk;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A key of the schema at its place in a brief, as the interview sees it.
 *
 * @param path in the brief, with the numbers of list items
 * @param key its last word
 * @param schema with references followed
 * @param required by the section around it
 * @param stop where it is asked: its own, or that of the section around it; empty if nowhere
 */
record Node(String path, String key, JsonNode schema, boolean required, String stop) {
  static final String NEVER = "never";

  static Node root(JsonNode schema) {
    return new Node("", "", schema, true, NEVER);
  }

  /** The keys of a section, in the order of the schema. */
  List<Node> keys() {
    List<String> needed = new ArrayList<>();
    schema.path("required").forEach(k -> needed.add(k.asText()));
    List<Node> keys = new ArrayList<>();
    schema
        .path("properties")
        .properties()
        .forEach(
            e -> {
              String at = path.isEmpty() ? e.getKey() : path + "." + e.getKey();
              keys.add(below(at, e.getKey(), e.getValue(), needed.contains(e.getKey())));
            });
    return keys;
  }

  /** One item of a list. */
  Node item(int index) {
    return below(path + "[" + index + "]", "", schema.path("items"), true);
  }

  private Node below(String at, String name, JsonNode child, boolean needed) {
    return new Node(at, name, child, needed, child.path("x-walk").asText(stop));
  }

  boolean isAsked() {
    return !stop.equals(NEVER);
  }

  boolean isSection() {
    return schema.path("properties").size() > 0;
  }

  boolean isList() {
    return schema.has("items") && !isRow();
  }

  /** A list of so many values, such as a point. */
  boolean isRow() {
    return schema.has("items")
        && schema.path("minItems").asInt() > 1
        && schema.path("minItems").asInt() == schema.path("maxItems").asInt();
  }

  boolean isMeasure() {
    return schema.has("x-unit");
  }

  boolean isText() {
    return schema.path("type").asText().equals("string") && !schema.has("enum");
  }

  /** Words that may stand in place of the section or list, such as {@code none}. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    schema.path("then").path("enum").forEach(w -> words.add(w.asText()));
    return words;
  }

  List<String> choices() {
    List<String> choices = new ArrayList<>();
    schema.path("enum").forEach(w -> choices.add(w.asText()));
    if (schema.path("type").asText().equals("boolean")) {
      choices.addAll(List.of("true", "false"));
    }
    return choices;
  }

  /** Whether a section is asked about before its keys are. */
  boolean hasGate() {
    return isSection()
        && !required
        && !schema.path("x-walk-gate").asText().equals("always")
        && !path.endsWith("]");
  }

  /** Whether the brief cannot do without it once its section is there. */
  boolean mustBeWritten() {
    return required || schema.has("x-typical") && !isSection() && !isList();
  }

  /** The value whose answer decides whether this is asked; empty if it always is. */
  String conditionPath() {
    String condition = schema.path("x-walk-if").asText();
    int equals = condition.indexOf('=');
    int dot = path.lastIndexOf('.');
    return equals < 0 ? "" : (dot < 0 ? "" : path.substring(0, dot + 1)) + before(condition);
  }

  private static String before(String condition) {
    return condition.substring(0, condition.indexOf('='));
  }

  /** What that answer has to be. */
  String conditionWord() {
    String condition = schema.path("x-walk-if").asText();
    return condition.substring(condition.indexOf('=') + 1);
  }

  /** Whether a thing is better left out than guessed, when what it needs is not known. */
  boolean isBetterLeftOut() {
    return schema.path("x-walk-unknown").asText().equals("without");
  }

  /** From 0, of the list item that this is or is part of; empty if of none. */
  OptionalInt index() {
    int open = path.lastIndexOf('[');
    return open < 0
        ? OptionalInt.empty()
        : OptionalInt.of(Integer.parseInt(path.substring(open + 1, path.indexOf(']', open))));
  }

  /** The path of what is around a path: a section, a list, or nothing. */
  static String around(String path) {
    int dot = path.lastIndexOf('.');
    int open = path.lastIndexOf('[');
    return path.substring(0, Math.max(0, Math.max(dot, open)));
  }

  String title() {
    return schema.path("title").asText(key);
  }
}
