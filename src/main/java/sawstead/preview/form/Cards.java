package sawstead.preview.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads the cards off a schema. Each section of the whole is a card; a section within it is a group
 * of the card. Of a list there is one group for each item that the text has.
 */
final class Cards {
  private final Set<String> paths;

  private Cards(Set<String> paths) {
    this.paths = paths;
  }

  /**
   * The cards.
   *
   * @param schema of the whole brief, references followed
   * @param paths of all values that the text has, to know how long its lists are
   */
  static List<Card> of(JsonNode schema, Set<String> paths) {
    Cards reader = new Cards(paths);
    List<Card> cards = new ArrayList<>();
    List<Field> loose = new ArrayList<>();
    schema
        .path("properties")
        .properties()
        .forEach(
            entry -> {
              JsonNode node = entry.getValue();
              if (isSection(node) || isList(node)) {
                Map<String, List<Field>> groups = new LinkedHashMap<>();
                reader.walk(entry.getKey(), "", node, groups);
                cards.add(card(node, groups));
              } else {
                loose.add(field(entry.getKey(), node));
              }
            });
    if (!loose.isEmpty()) {
      cards.add(0, new Card("brief", "", List.of(new Card.Group("", loose))));
    }
    return cards;
  }

  private static Card card(JsonNode node, Map<String, List<Field>> groups) {
    List<Card.Group> listed = new ArrayList<>();
    groups.forEach((title, fields) -> listed.add(new Card.Group(title, fields)));
    return new Card(node.path("title").asText(), node.path("description").asText(), listed);
  }

  private void walk(String path, String group, JsonNode node, Map<String, List<Field>> into) {
    if (isSection(node)) {
      node.path("properties")
          .properties()
          .forEach(
              entry -> {
                JsonNode child = entry.getValue();
                String at = path + "." + entry.getKey();
                boolean nested = isSection(child) || isList(child);
                walk(at, nested ? joined(group, title(entry.getKey(), child)) : group, child, into);
              });
    } else if (isList(node)) {
      JsonNode item = node.path("items");
      for (int k = 0; paths.contains(path + "[" + k + "]"); k++) {
        String name = joined(group, title("", item) + " " + (k + 1));
        walk(path + "[" + k + "]", isSection(item) ? name : group, item, into);
      }
    } else {
      into.computeIfAbsent(group, g -> new ArrayList<>()).add(field(path, node));
    }
  }

  private static Field field(String path, JsonNode node) {
    String key = path.substring(path.lastIndexOf('.') + 1);
    List<String> choices = new ArrayList<>();
    node.path("enum").forEach(e -> choices.add(e.asText()));
    if (node.path("type").asText().equals("boolean")) {
      choices.addAll(List.of("true", "false"));
    }
    return new Field(
        path,
        title(key, node),
        node.path("description").asText(),
        hint(node),
        choices,
        node.path("x-unit").asText().equals("mm"));
  }

  private static String hint(JsonNode node) {
    if (node.has("default")) {
      return "default " + node.path("default").asText();
    }
    if (node.has("x-default-from")) {
      return "default: " + node.path("x-default-from").asText();
    }
    return node.path("examples").has(0) ? "such as " + node.path("examples").get(0).asText() : "";
  }

  private static String title(String key, JsonNode node) {
    return node.path("title").asText(key);
  }

  private static String joined(String group, String title) {
    return group.isEmpty() ? title : group + ", " + title;
  }

  private static boolean isSection(JsonNode node) {
    return node.path("properties").size() > 0;
  }

  private static boolean isList(JsonNode node) {
    JsonNode type = node.path("type");
    boolean array = type.asText().equals("array");
    for (JsonNode one : type) {
      array |= one.asText().equals("array");
    }
    return array && node.has("items");
  }
}
