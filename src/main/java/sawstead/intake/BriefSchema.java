package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import sawstead.measure.LengthFormat;
import sawstead.measure.LengthText;
import sawstead.measure.Unit;

/**
 * The JSON Schema (draft 2020-12) of a brief: every key with its meaning, examples, unit, range and
 * default. Besides the standard keywords it uses these annotations of our own:
 *
 * <ul>
 *   <li>{@code x-unit}: {@code mm}, {@code kg}, {@code deg} or {@code kg/m3}, the unit of the other
 *       annotations of the key; the brief itself may use any unit of that kind;
 *   <li>{@code x-min}, {@code x-max}: the range that is accepted;
 *   <li>{@code x-band} or {@code x-band-percent}: how far a value given without a band may be off;
 *   <li>{@code x-default-band}: how far the default may be off; {@code x-unknown-band}: the same
 *       for {@code unknown} (four times the default's band if not given);
 *   <li>{@code x-default-from}: what the default follows from, where it is no fixed value;
 *   <li>{@code x-names}: what the numbers of a list of fixed length are called, in order;
 *   <li>{@code x-instead}: the end of the remedy when a value is out of range;
 *   <li>{@code x-walk}: the stop of {@code x-walk-stops} at which the interview asks for it and for
 *       what is in it, or {@code never}; {@code x-walk-gate}: {@code always} if a section is not
 *       asked about as a whole; {@code x-walk-if}: the answer to the key beside it that makes it
 *       worth asking; {@code x-walk-asks}: the question about a section or a list as a whole;
 *       {@code x-walk-unknown}: {@code without} if it is left out when a measure that it needs is
 *       not known; {@code x-walk-why}: why it is never asked;
 *   <li>{@code x-typical}: what stands in for it in the interview when nobody knows, one value for
 *       each kind of saw or one for all; {@code x-typical-of}: the measure that it grows with;
 *       {@code x-typical-turns}: every second item of a list lies on the other side.
 * </ul>
 */
public final class BriefSchema {

  /** What is written in the units of the others. */
  private static final Map<Unit, Pattern> OTHERS =
      Map.of(
          Unit.MM, Pattern.compile("[0-9] ?(in|lb|ft|\"|')(\\b|$|3)|[0-9]/[0-9]"),
          Unit.INCH, Pattern.compile("[0-9] ?(mm|cm|kg)"));

  static final SchemaFile FILE = SchemaFile.of("/sawstead/brief.schema.json");

  private BriefSchema() {}

  /** The schema as text, as {@code sawstead schema} prints it. */
  public static String text() {
    return FILE.text();
  }

  /** The schema of the whole brief as it stands in the file. */
  static JsonNode root() {
    return FILE.root();
  }

  /** The schema of the whole brief with every reference followed; not to be changed. */
  public static JsonNode expanded() {
    return FILE.expanded();
  }

  /** The schema of a place in a brief, such as {@code saw.slots[0].width}; missing if none. */
  public static JsonNode at(String path) {
    JsonNode node = expanded();
    for (String step : path.replace("[", ".[").split("\\.")) {
      node = step.startsWith("[") ? items(node) : key(node, step);
    }
    return node;
  }

  /** The schema of a key of an expanded section; a missing node if there is no such key. */
  static JsonNode key(JsonNode section, String key) {
    return section.path("properties").path(key);
  }

  /** The schema of the items of an expanded list. */
  static JsonNode items(JsonNode list) {
    return list.path("items");
  }

  /**
   * How a value of a key is written, for somebody who measures in a unit: the first example that is
   * not in the units of the others, or else the first one, turned into theirs if it is a length;
   * empty if the key has no examples.
   */
  public static String example(JsonNode node, Unit unit) {
    String first = node.path("examples").path(0).asText("");
    for (JsonNode example : node.path("examples")) {
      if (!OTHERS.get(unit).matcher(example.asText()).find()) {
        return example.asText();
      }
    }
    return node.path("x-unit").asText().equals("mm") ? turned(first, unit) : first;
  }

  /** The same length as a person with a rule of the other kind would write it. */
  private static String turned(String example, Unit unit) {
    if (example.isEmpty()) {
      return example;
    }
    double length = LengthText.parse(example, unit).nominal();
    double fine = Math.abs(length) < 100 ? 0.1 : 1;
    return unit == Unit.MM
        ? LengthFormat.millimetres().withUnit(Math.rint(length / fine) * fine)
        : LengthFormat.inches(16).withUnit(length);
  }

  /** The first sentence of a key's description, for use within another sentence. */
  static String meaning(JsonNode node) {
    String text = node.path("description").asText("see `sawstead schema`");
    int end = text.indexOf(". ");
    String first = (end < 0 ? text : text.substring(0, end)).replaceAll("\\.$", "");
    return first.substring(0, 1).toLowerCase(Locale.ROOT) + first.substring(1);
  }
}
