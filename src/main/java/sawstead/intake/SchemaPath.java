package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.path.NodePath;

/** Finds the part of the schema that speaks of a place in a file. */
final class SchemaPath {

  private SchemaPath() {}

  /** The schema of the value at that place; a missing node if the schema knows no such place. */
  static JsonNode to(SchemaFile file, NodePath location) {
    JsonNode node = file.expanded();
    for (int i = 0; i < location.getNameCount(); i++) {
      Object step = location.getElement(i);
      node = step instanceof Integer ? BriefSchema.items(node) : key(node, String.valueOf(step));
    }
    return node;
  }

  /** A section whose keys are the user's own words has one schema for all of them. */
  private static JsonNode key(JsonNode node, String key) {
    JsonNode known = BriefSchema.key(node, key);
    JsonNode any = node.path("additionalProperties");
    return known.isMissingNode() && any.isObject() ? any : known;
  }
}
