package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;

/** The JSON Schema (draft 2020-12) of a file with a unit of the user's own. */
public final class UnitSchema {

  static final SchemaFile FILE = SchemaFile.of("/sawstead/unit.schema.json", BriefSchema.FILE);

  private UnitSchema() {}

  /** The schema as text, as {@code sawstead schema --unit} prints it. */
  public static String text() {
    return FILE.text();
  }

  /** The schema of the entries of a list of a unit file, with every reference followed. */
  static JsonNode items(String list) {
    return BriefSchema.items(BriefSchema.key(FILE.expanded(), list));
  }
}
