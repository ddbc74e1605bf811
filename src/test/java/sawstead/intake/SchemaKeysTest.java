package sawstead.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import sawstead.brief.Brief;

/** The schema and the mappers speak of the same keys, and each key makes a difference. */
class SchemaKeysTest {

  @Test
  void schema_andMappers_haveTheSameKeys() throws Exception {
    Set<String> asked = new TreeSet<>();
    for (Path file : Briefs.good()) {
      BriefReader.read(file.toString(), Files.readAllBytes(file), asked);
    }
    Set<String> known = schemaKeys();
    Set<String> unread = new TreeSet<>(known);
    unread.removeAll(asked);
    Set<String> unknown = new TreeSet<>(asked);
    unknown.removeAll(known);
    assertEquals(Set.of(), unread);
    assertEquals(Set.of(), unknown);
  }

  @Test
  void everyValue_thatIsChanged_changesTheBriefOrIsRefused() throws Exception {
    List<String> ignored = new ArrayList<>();
    for (String name : List.of("every-key.yaml", "other-keys.yaml")) {
      ObjectNode tree = Briefs.tree(Briefs.CASES.resolve(name));
      Brief before = read(tree).orElseThrow();
      for (Leaves.Leaf leaf : Leaves.of(tree)) {
        JsonNode was = leaf.value();
        leaf.replace(another(was, leaf.schema()));
        if (read(tree).filter(before::equals).isPresent()) {
          ignored.add(name + ": " + leaf.path());
        }
        leaf.replace(was);
      }
      assertEquals(before, read(tree).orElseThrow());
    }
    // `like` only picks defaults, and every-key.yaml leaves nothing to default.
    assertEquals(List.of("every-key.yaml: saw.like"), ignored);
  }

  @Test
  void like_picksOtherDefaults() {
    assertNotEquals(Briefs.withSaw("like: benchtop").saw(), Briefs.withSaw("like: jobsite").saw());
  }

  private static Optional<Brief> read(JsonNode tree) {
    try {
      // The name tells the folder in which unit files are looked for.
      String name = Briefs.CASES.resolve("changed.yaml").toString();
      return Optional.of(BriefReader.read(name, Briefs.bytes(tree)));
    } catch (BriefException refused) {
      return Optional.empty();
    }
  }

  private static JsonNode another(JsonNode was, JsonNode schema) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    for (JsonNode word : schema.path("enum")) {
      if (!word.equals(was)) {
        return word;
      }
    }
    if (was.isBoolean()) {
      return json.booleanNode(!was.asBoolean());
    }
    if (schema.path("type").asText().equals("integer")) {
      return json.numberNode(
          was.asInt() == schema.path("maximum").asInt() ? was.asInt() - 1 : was.asInt() + 1);
    }
    return was.isNumber()
        ? json.numberNode(was.asDouble() + 0.001)
        : json.textNode(was.asText().equals("unknown") ? "17.7" : was.asText() + "x");
  }

  @Test
  void everyKey_isDescribed() {
    for (String path : schemaKeys()) {
      JsonNode key = node(path);
      assertTrue(key.path("title").isTextual(), () -> path + " has no title");
      assertTrue(key.path("description").asText().length() > 3, () -> path + " is not described");
      boolean section = key.path("type").asText().equals("object");
      assertTrue(
          section || key.has("examples") || key.has("default"), () -> path + " has no example");
    }
  }

  private static JsonNode node(String path) {
    JsonNode node = BriefSchema.expanded();
    for (String step : path.split("\\.")) {
      node = BriefSchema.key(node, step.replace("[]", ""));
      node = step.endsWith("[]") ? BriefSchema.items(node) : node;
    }
    return node;
  }

  private static Set<String> schemaKeys() {
    Set<String> keys = new TreeSet<>();
    collect(BriefSchema.expanded(), "", keys);
    return keys;
  }

  private static void collect(JsonNode node, String path, Set<String> keys) {
    node.path("properties")
        .fieldNames()
        .forEachRemaining(
            key -> {
              String below = path.isEmpty() ? key : path + "." + key;
              keys.add(below);
              collect(node.path("properties").path(key), below, keys);
            });
    if (node.has("items")) {
      collect(node.path("items"), path + "[]", keys);
    }
  }
}
