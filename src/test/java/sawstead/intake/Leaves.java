package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Finds the single values of a brief's tree together with their schema, for tests that change them.
 */
final class Leaves {

  /** One value: where it stands, what the schema says of it, and a way to replace it. */
  record Leaf(String path, JsonNode parent, Object key, JsonNode schema) {

    JsonNode value() {
      return key instanceof Integer index ? parent.get(index) : parent.get((String) key);
    }

    void replace(JsonNode value) {
      if (key instanceof Integer index) {
        ((ArrayNode) parent).set(index, value);
      } else {
        ((ObjectNode) parent).set((String) key, value);
      }
    }
  }

  private Leaves() {}

  static List<Leaf> of(JsonNode brief) {
    List<Leaf> leaves = new ArrayList<>();
    collect(brief, BriefSchema.expanded(), "", leaves);
    return leaves;
  }

  private static void collect(JsonNode node, JsonNode schema, String path, List<Leaf> leaves) {
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      String below = path.isEmpty() ? field.getKey() : path + "." + field.getKey();
      JsonNode fieldSchema = BriefSchema.key(schema, field.getKey());
      if (field.getValue().isValueNode()) {
        leaves.add(new Leaf(below, node, field.getKey(), fieldSchema));
      }
      collect(field.getValue(), fieldSchema, below, leaves);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      JsonNode itemSchema = BriefSchema.items(schema);
      if (node.get(i).isValueNode()) {
        leaves.add(new Leaf(path + "[" + i + "]", node, i, itemSchema));
      }
      collect(node.get(i), itemSchema, path + "[" + i + "]", leaves);
    }
  }
}
