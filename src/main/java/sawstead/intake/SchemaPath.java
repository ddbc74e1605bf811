package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.path.NodePath;

/** Finds the part of the schema that speaks of a place in a brief. */
final class SchemaPath {

  private SchemaPath() {}

  /** The schema of the value at that place; a missing node if the schema knows no such place. */
  static JsonNode to(NodePath location) {
    JsonNode node = BriefSchema.expanded();
    for (int i = 0; i < location.getNameCount(); i++) {
      Object step = location.getElement(i);
      node =
          step instanceof Integer
              ? BriefSchema.items(node)
              : BriefSchema.key(node, String.valueOf(step));
    }
    return node;
  }
}
