package sawstead.preview.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sawstead.intake.BriefSchema;
import sawstead.measure.Unit;

/**
 * Reads the cards off a schema. Each section of the whole is a card; a section within it is a group
 * of the card. Of a list there is one group for each item that the text has.
 */
final class Cards {
  private final Set<String> paths;

  private final Unit unit;

  private Cards(Set<String> paths, Unit unit) {
    this.paths = paths;
    this.unit = unit;
  }

  /**
   * The cards.
   *
   * @param schema of the whole brief, references followed
   * @param paths of all values that the text has, to know how long its lists are
   * @param unit that examples are in
   */
  static List<Card> of(JsonNode schema, Set<String> paths, Unit unit) {
    Cards reader = new Cards(paths, unit);
    List<Card> cards = new ArrayList<>();
    List<Field> loose = new ArrayList<>();
    schema
        .path("properties")
        .properties()
        .forEach(
            entry -> {
              JsonNode node = entry.getValue();
              if (isSection(node) || isList(node)) {
                Map<String, Draft> groups = new LinkedHashMap<>();
                reader.walk(entry.getKey(), new Draft("", "", 0), node, groups);
                cards.add(card(node, groups));
              } else {
                loose.add(reader.field(entry.getKey(), node));
              }
            });
    if (!loose.isEmpty()) {
      cards.add(0, new Card("brief", "", List.of(new Card.Group("", loose, "", 0))));
    }
    return cards;
  }

  /** A group that is still being filled. */
  private record Draft(String title, String list, int index, List<Field> fields) {
    Draft(String title, String list, int index) {
      this(title, list, index, new ArrayList<>());
    }

    Draft within(String name) {
      return new Draft(joined(title, name), list, index);
    }
  }

  private static Card card(JsonNode node, Map<String, Draft> groups) {
    List<Card.Group> listed = new ArrayList<>();
    groups
        .values()
        .forEach(g -> listed.add(new Card.Group(g.title(), g.fields(), g.list(), g.index())));
    return new Card(node.path("title").asText(), node.path("description").asText(), listed);
  }

  private void walk(String path, Draft group, JsonNode node, Map<String, Draft> into) {
    if (isSection(node)) {
      if (node.path("then").has("enum") && !isWrittenOut(path)) {
        put(group, stateField(path, node), into);
      }
      node.path("properties")
          .properties()
          .forEach(
              entry -> {
                JsonNode child = entry.getValue();
                String at = path + "." + entry.getKey();
                boolean nested = isSection(child) || isList(child);
                walk(at, nested ? group.within(title(entry.getKey(), child)) : group, child, into);
              });
    } else if (isList(node)) {
      list(path, group, "", node, into);
    } else {
      put(group, field(path, node), into);
    }
  }

  private void list(String path, Draft group, String row, JsonNode node, Map<String, Draft> into) {
    JsonNode item = node.path("items");
    int k = 0;
    for (; paths.contains(path + "[" + k + "]"); k++) {
      String at = path + "[" + k + "]";
      if (isSection(item)) {
        walk(at, new Draft(group.within(numbered("", item, k)).title(), path, k), item, into);
      } else if (isList(item)) {
        String title = item.path("title").asText();
        list(at, group, title.isEmpty() ? "" : title + " " + (k + 1) + ", ", item, into);
      } else {
        String name = node.path("x-names").path(k).asText(title(key(at), item));
        put(group, field(at, item, row + name), into);
      }
    }
    if (isSection(item)) {
      Draft more = new Draft(group.within(title("", item)).title(), path, k);
      into.put("more " + path, more);
    }
  }

  private static String numbered(String key, JsonNode item, int index) {
    return title(key, item) + " " + (index + 1);
  }

  private static void put(Draft group, Field field, Map<String, Draft> into) {
    into.computeIfAbsent(
            group.title() + " " + group.list(),
            g -> new Draft(group.title(), group.list(), group.index()))
        .fields()
        .add(field);
  }

  private boolean isWrittenOut(String path) {
    return paths.stream().anyMatch(p -> p.startsWith(path + "."));
  }

  /** The words that may stand for a section, and one that writes it out. */
  private static Field stateField(String path, JsonNode node) {
    List<String> choices = new ArrayList<>();
    node.path("then").path("enum").forEach(w -> choices.add(w.asText()));
    choices.add(Field.WRITE_OUT);
    return new Field(
        path,
        title("", node),
        node.path("description").asText(),
        "left out",
        choices,
        Scale.NONE,
        "",
        0,
        0);
  }

  private Field field(String path, JsonNode node) {
    return field(path, node, title(key(path), node));
  }

  private static String key(String path) {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  private Field field(String path, JsonNode node, String title) {
    List<String> choices = new ArrayList<>();
    node.path("enum").forEach(e -> choices.add(e.asText()));
    if (node.path("type").asText().equals("boolean")) {
      choices.addAll(List.of("true", "false"));
    }
    return new Field(
        path,
        title,
        node.path("description").asText(),
        hint(node),
        choices,
        scale(node),
        node.path("x-unit").asText(),
        limit(node, "min", Double.NEGATIVE_INFINITY),
        limit(node, "max", Double.POSITIVE_INFINITY));
  }

  private static Scale scale(JsonNode node) {
    String unit = node.path("x-unit").asText();
    if (unit.isEmpty()) {
      return node.path("type").asText().equals("integer") ? Scale.COUNT : Scale.NONE;
    }
    return unit.equals("mm") ? Scale.LENGTH : Scale.AMOUNT;
  }

  private static double limit(JsonNode node, String which, double without) {
    return node.path("x-" + which).asDouble(node.path(which + "imum").asDouble(without));
  }

  private String hint(JsonNode node) {
    if (node.has("default")) {
      return "default " + node.path("default").asText();
    }
    if (node.has("x-default-from")) {
      return "default: " + node.path("x-default-from").asText();
    }
    String example = BriefSchema.example(node, unit);
    return example.isEmpty() ? "" : "such as " + example;
  }

  private static String title(String key, JsonNode node) {
    return node.path("title").asText(numbered(key));
  }

  /** {@code outline[0][1]} as a person counts: {@code outline 1.2}. */
  private static String numbered(String key) {
    int open = key.indexOf('[');
    return open < 0
        ? key
        : key.substring(0, open)
            + " "
            + Pattern.compile("[0-9]+")
                .matcher(key.substring(open))
                .results()
                .map(m -> Integer.toString(Integer.parseInt(m.group()) + 1))
                .collect(Collectors.joining("."));
  }

  private static String joined(String group, String title) {
    // A place is not the place of a place.
    boolean said = group.equals(title) || group.endsWith(", " + title);
    return said ? group : group.isEmpty() ? title : group + ", " + title;
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
