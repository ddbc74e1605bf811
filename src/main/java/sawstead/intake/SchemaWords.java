package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says in plain words what the schema has against a value, and what to write instead. */
final class SchemaWords {

  /** What is wrong and what to do. */
  record Words(String what, String remedy) {}

  /** So many keys of a section are named as examples. */
  private static final int SOME = 4;

  private final Error error;
  private final String path;
  private final Item item;

  /** The schema of the value, or for a missing or unknown key that of the section. */
  private final JsonNode schema;

  private SchemaWords(Error error, String path, Item item, JsonNode schema) {
    this.error = error;
    this.path = path;
    this.item = item;
    this.schema = schema;
  }

  /**
   * Words for one fault.
   *
   * @param path where
   * @param item the value there, or null for a missing key
   */
  static Words of(SchemaFile file, Error error, String path, Item item) {
    JsonNode schema = SchemaPath.to(file, error.getInstanceLocation());
    return new SchemaWords(error, path, item, schema).words();
  }

  private Words words() {
    return switch (error.getKeyword()) {
      case "additionalProperties" -> unknownKey();
      case "required" -> missingKey();
      case "type" -> wrongKind();
      case "enum" -> wrongWord();
      case "pattern" -> wrongPattern();
      case "minimum", "maximum" -> outOfRange();
      case "minItems", "maxItems" -> wrongCount();
      case "minLength", "maxLength" ->
          new Words(
              path + " is too " + (error.getKeyword().equals("minLength") ? "short" : "long"),
              "write 1 to 60 characters");
      case "minProperties", "maxProperties" ->
          new Words(
              path + " must have exactly one key",
              "write one of " + String.join(", ", keys(schema)) + "; one list item for each");
      default -> new Words(path + ": " + error.getMessage(), "see `sawstead schema`");
    };
  }

  private Words unknownKey() {
    String key = error.getProperty();
    String section = path.contains(".") ? path.substring(0, path.lastIndexOf('.')) : "a brief";
    List<String> known = keys(schema);
    Optional<String> nearest = Nearest.to(key, known);
    String all = "known here are " + String.join(", ", known);
    return new Words(
        "`" + key + "` is no key of " + section,
        nearest
            .map(word -> "write `" + word + "`, or remove it; " + all)
            .orElse("remove it; " + all));
  }

  private Words missingKey() {
    JsonNode missing = BriefSchema.key(schema, error.getProperty());
    String key = error.getProperty();
    String remedy =
        missing.has("enum")
            ? "add `" + key + ": ..` with one of " + String.join(", ", texts(missing.path("enum")))
            : "add `" + key + ": " + example(missing) + "`: " + BriefSchema.meaning(missing);
    return new Words(path + " is missing", remedy);
  }

  private Words wrongKind() {
    if (item instanceof Item.Scalar scalar && scalar.type() == Item.Kind.NOTHING) {
      return new Words(path + " is empty", "write " + example(schema) + ", or remove the key");
    }
    String found = item == null ? "missing" : item.kind();
    boolean quote = item instanceof Item.Scalar && schema.path("type").asText().equals("string");
    return new Words(
        path + " is " + found + ", but should be " + kind(schema),
        quote ? "put it in quotes" : howToWrite());
  }

  private Words wrongWord() {
    List<String> known = texts(error.getSchemaNode());
    String found = item instanceof Item.Scalar scalar ? scalar.text() : "";
    Optional<String> nearest = Nearest.to(found, known);
    if (schema.path("type").isArray()) {
      return new Words(
          path + " is `" + found + "`, but should be " + kind(schema),
          nearest.map(word -> "write " + word).orElse(howToWrite()));
    }
    String remedy =
        found.equals("unknown")
            ? "write one of them, or leave the key out"
            : "write " + nearest.orElse(String.join(" or ", known));
    return new Words(path + " is `" + found + "`, none of " + String.join(", ", known), remedy);
  }

  /** For a section or list that may be one word instead: the word, or the beginning of its keys. */
  private String howToWrite() {
    List<String> words = texts(schema.path("then").path("enum"));
    List<String> keys = keys(schema);
    if (words.isEmpty() || keys.isEmpty()) {
      return "write for example " + example(schema);
    }
    String some = String.join(", ", keys.subList(0, Math.min(SOME, keys.size())));
    return "write `" + String.join("` or `", words) + "`, or keys such as " + some;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return texts;
  }

  private Words wrongPattern() {
    String found = item instanceof Item.Scalar scalar ? scalar.text() : "";
    if (schema.path("pattern").asText().startsWith("^[^")) {
      return new Words(path + " has a line break or a control character", "write one line of text");
    }
    return new Words(
        "`" + shown(found) + "` is no id",
        schema.path("pattern").asText().contains("/")
            ? "use small letters, digits and hyphens, parts joined by /, such as " + example(schema)
            : "use small letters, digits and hyphens, such as " + example(schema));
  }

  private Words outOfRange() {
    String low = schema.path("minimum").asText();
    String high = schema.path("maximum").asText();
    String found = item instanceof Item.Scalar scalar ? scalar.text() : "";
    return new Words(
        schema.path("title").asText(path)
            + " is "
            + found
            + ", not between "
            + low
            + " and "
            + high,
        "write a number from " + low + " to " + high);
  }

  private Words wrongCount() {
    int found = item instanceof Item.Listing list ? list.items().size() : 0;
    JsonNode least = schema.path("minItems");
    JsonNode most = schema.path("maxItems");
    String wanted =
        least.equals(most)
            ? least.asText()
            : error.getKeyword().equals("minItems")
                ? "at least " + least.asText()
                : "at most " + most.asText();
    return new Words(
        path
            + " has "
            + found
            + (found == 1 ? " value" : " values")
            + ", but should have "
            + wanted,
        "write for example " + example(schema));
  }

  private static String shown(String text) {
    String line = text.replaceAll("\\p{Cntrl}", "?");
    return line.length() > 70 ? line.substring(0, 67) + "..." : line;
  }

  private static List<String> keys(JsonNode section) {
    List<String> keys = new ArrayList<>();
    section.path("properties").fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static String example(JsonNode node) {
    JsonNode example = node.path("examples").path(0);
    if (example.isMissingNode()) {
      return "{" + String.join(": .., ", keys(node)) + ": ..}";
    }
    return example.isTextual()
        ? example.asText()
        : example.toString().replace("\"", "").replace(":", ": ").replace(",", ", ");
  }

  private static String kind(JsonNode node) {
    String unit = node.path("x-unit").asText();
    if (!unit.isEmpty()) {
      return MeasureKind.of(unit).words();
    }
    JsonNode type = node.path("type");
    if (type.isArray()) {
      return kindOrWord(type.path(0).asText(), texts(node.path("then").path("enum")));
    }
    return switch (type.asText()) {
      case "object" -> "a section with keys";
      case "array" -> "a list";
      case "boolean" -> "true or false";
      case "integer" -> "a whole number";
      case "number" -> "a number";
      default -> "text";
    };
  }

  private static String kindOrWord(String type, List<String> words) {
    String rest = words.isEmpty() ? "" : " or `" + String.join("` or `", words) + "`";
    return switch (type) {
      case "object" -> "a section with keys" + rest;
      case "array" -> "a list" + rest;
      default -> "text";
    };
  }
}
