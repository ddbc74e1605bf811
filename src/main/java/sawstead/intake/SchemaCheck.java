package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.List;

/**
 * Checks keys and kinds of values of a tree against the schema. Every fault of the file is found in
 * one pass; what the text of a length says is not looked at here.
 */
final class SchemaCheck {

  private final SchemaFile schema;
  private final Problems problems;

  SchemaCheck(SchemaFile schema, Problems problems) {
    this.schema = schema;
    this.problems = problems;
  }

  void check(Item root) {
    JsonNode json = root.json();
    for (Error error : schema.schema().validate(json)) {
      note(error, root);
    }
  }

  private void note(Error error, Item root) {
    Spot spot = Spot.at(root, error.getInstanceLocation());
    String property = error.getProperty();
    boolean aboutKey =
        error.getKeyword().equals("required") || error.getKeyword().equals("additionalProperties");
    if (aboutKey && property != null) {
      spot = spot.key(property);
    }
    SchemaWords.Words words = SchemaWords.of(schema, error, spot.path(), spot.item());
    problems.add(spot.line(), spot.path(), words.what(), words.remedy());
  }

  /**
   * A place in the tree.
   *
   * @param item what stands there, null for a missing key
   */
  private record Spot(String path, int line, Item item) {

    static Spot at(Item root, NodePath location) {
      Spot spot = new Spot("", root.line(), root);
      for (int i = 0; i < location.getNameCount(); i++) {
        Object step = location.getElement(i);
        spot = step instanceof Integer index ? spot.index(index) : spot.key(String.valueOf(step));
      }
      return spot;
    }

    Spot key(String key) {
      String below = path.isEmpty() ? key : path + "." + key;
      Item.Member member = item instanceof Item.Table table ? table.members().get(key) : null;
      return member == null
          ? new Spot(below, line, null)
          : new Spot(below, member.keyLine(), member.value());
    }

    Spot index(int index) {
      List<Item> items = item instanceof Item.Listing list ? list.items() : List.of();
      String below = path + "[" + index + "]";
      return index < items.size()
          ? new Spot(below, items.get(index).line(), items.get(index))
          : new Spot(below, line, null);
    }
  }
}
