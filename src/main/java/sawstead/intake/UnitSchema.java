package sawstead.intake;

/** The JSON Schema (draft 2020-12) of a file with a unit of the user's own. */
public final class UnitSchema {

  static final SchemaFile FILE = SchemaFile.of("/sawstead/unit.schema.json", BriefSchema.FILE);

  private UnitSchema() {}

  /** The schema as text, as {@code sawstead schema --unit} prints it. */
  public static String text() {
    return FILE.text();
  }
}
