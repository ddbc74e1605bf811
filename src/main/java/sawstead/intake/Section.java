package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A section of a brief as a mapper sees it: it asks for keys, and gets values that can be used.
 * What is missing comes from the schema's default or from the mapper's; what is wrong is noted, and
 * a stand-in is returned so that the rest of the brief is read too.
 *
 * <p>Asking for a key that the schema does not have is a mistake in this program and fails.
 */
final class Section {

  private static final String UNKNOWN = "unknown";

  private final Reading reading;
  private final JsonNode schema;
  private final String path;
  private final int line;
  private final Map<String, Item.Member> members;
  private final boolean unknown;

  private Section(Reading reading, JsonNode schema, String path, int line, Item item) {
    this.reading = reading;
    this.schema = schema;
    this.path = path;
    this.line = line;
    this.members = item instanceof Item.Table table ? table.members() : Map.of();
    this.unknown = item instanceof Item.Scalar scalar && scalar.text().equals(UNKNOWN);
  }

  /** The whole brief. */
  static Section root(Reading reading, Item item) {
    return new Section(reading, BriefSchema.expanded(), "", item.line(), item);
  }

  /** A section that stands elsewhere than in a brief, with its expanded schema. */
  static Section of(Reading reading, JsonNode schema, String path, Item item) {
    return new Section(reading, schema, path, item.line(), item);
  }

  String path() {
    return path;
  }

  /** The line on which this section stands, or the nearest one around it. */
  int line() {
    return line;
  }

  Reading reading() {
    return reading;
  }

  /** Whether the file has this key, be its value good or bad. */
  boolean has(String key) {
    schemaOf(key);
    return members.containsKey(key);
  }

  /** Whether the value of this key is that word, such as {@code none}. */
  boolean is(String key, String word) {
    schemaOf(key);
    return item(key)
        .filter(item -> item instanceof Item.Scalar s && s.text().equals(word))
        .isPresent();
  }

  /** The section under this key; an empty one if the file has none. */
  Section section(String key) {
    JsonNode child = schemaOf(key);
    return new Section(
        reading, child, pathOf(key), lineOf(key), item(key).orElse(defaultItem(child)));
  }

  /** The sections of the list under this key; those of the schema's default if there is none. */
  List<Section> sections(String key) {
    JsonNode items = BriefSchema.items(schemaOf(key));
    List<Section> sections = new ArrayList<>();
    for (Entry entry : entries(key)) {
      sections.add(new Section(reading, items, entry.path(), entry.item().line(), entry.item()));
    }
    return sections;
  }

  /** One value of a list. */
  record Entry(String path, Item item) {}

  /** The values of the list under this key; those of the schema's default if there is none. */
  List<Entry> entries(String key) {
    Item item = item(key).orElse(defaultItem(schemaOf(key)));
    List<Entry> entries = new ArrayList<>();
    if (item instanceof Item.Listing list) {
      for (Item each : list.items()) {
        entries.add(new Entry(pathOf(key) + "[" + entries.size() + "]", each));
      }
    }
    return entries;
  }

  /** A measure that is required or has a fixed default. */
  Measured measure(String key) {
    return measureOf(key).value(Fallback.none());
  }

  /** A measure whose default follows from others. */
  Measured measure(String key, double fallback) {
    return measureOf(key).value(Fallback.of(fallback));
  }

  /** A measure whose default, and the band of it, follow from others. */
  Measured measure(String key, double fallback, double band) {
    return measureOf(key).value(Fallback.of(fallback, band));
  }

  /** A wish that the design decides if the file does not. */
  Optional<Measured> wish(String key) {
    MeasureReader reader = measureOf(key);
    return reader.isGiven() ? Optional.of(reader.value(Fallback.none())) : Optional.empty();
  }

  /** A length (mm) or angle (degrees) without a band. */
  double plain(String key) {
    return measure(key).nominal();
  }

  /** A length without a band, if the file has it. */
  Optional<Double> plainIfGiven(String key) {
    return wish(key).map(Measured::nominal);
  }

  /** A reader for one value that stands under a key, or in a list under it. */
  MeasureReader measureOf(String key) {
    return new MeasureReader(
        reading, schemaOf(key), pathOf(key), lineOf(key), unknown ? unknownItem() : itemOf(key));
  }

  private Item unknownItem() {
    return new Item.Scalar(line, UNKNOWN, Item.Kind.TEXT);
  }

  /** The lengths of a list such as {@code [x, y]}, stand-ins where it is not one. */
  List<Measured> row(String key, int count) {
    return row(reading, schemaOf(key), pathOf(key), lineOf(key), itemOf(key), count);
  }

  /** The same, from the schema's default if the file has none. */
  List<Measured> rowOrDefault(String key, int count) {
    Item item = item(key).orElse(defaultItem(schemaOf(key)));
    return row(reading, schemaOf(key), pathOf(key), lineOf(key), item, count);
  }

  /** The lengths of each row of a list of rows. */
  List<List<Measured>> rows(String key, int count) {
    JsonNode items = BriefSchema.items(schemaOf(key));
    return entries(key).stream()
        .map(e -> row(reading, items, e.path(), e.item().line(), e.item(), count))
        .toList();
  }

  private static List<Measured> row(
      Reading reading, JsonNode schema, String path, int line, Item item, int count) {
    List<Item> values = item instanceof Item.Listing list ? list.items() : List.of();
    List<Measured> row = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Item value = i < values.size() ? values.get(i) : null;
      int valueLine = value == null ? line : value.line();
      row.add(
          new MeasureReader(
                  reading, BriefSchema.items(schema), path + "[" + i + "]", valueLine, value)
              .value(Fallback.none()));
    }
    return row;
  }

  /** The lengths of a list. */
  List<Measured> list(String key) {
    JsonNode items = BriefSchema.items(schemaOf(key));
    return entries(key).stream()
        .map(
            entry ->
                new MeasureReader(reading, items, entry.path(), entry.item().line(), entry.item())
                    .value(Fallback.none()))
        .toList();
  }

  /** Text, if the file has it. */
  Optional<String> text(String key) {
    schemaOf(key);
    return item(key)
        .filter(item -> item instanceof Item.Scalar)
        .map(item -> ((Item.Scalar) item).text());
  }

  /** One word of an enum, written as the schema lists it; else the fallback. */
  <E extends Enum<E>> E word(String key, Class<E> type, E fallback) {
    return wordIfGiven(key, type).orElse(fallback);
  }

  /** One word of an enum, from the file or from the schema's default. */
  <E extends Enum<E>> E word(String key, Class<E> type) {
    JsonNode standard = schemaOf(key).path("default");
    E fallback =
        standard.isTextual() ? constant(type, standard.asText()) : type.getEnumConstants()[0];
    return word(key, type, fallback);
  }

  /** One word of an enum, if the file has it. */
  <E extends Enum<E>> Optional<E> wordIfGiven(String key, Class<E> type) {
    List<String> words = new ArrayList<>();
    schemaOf(key).path("enum").forEach(word -> words.add(word.asText()));
    return text(key).filter(words::contains).map(word -> constant(type, word));
  }

  private static <E extends Enum<E>> E constant(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** True or false, from the file or from the schema's default. */
  boolean flag(String key) {
    boolean standard = schemaOf(key).path("default").asBoolean();
    return item(key)
        .filter(item -> item instanceof Item.Scalar s && s.type() == Item.Kind.SWITCH)
        .map(item -> ((Item.Scalar) item).text().equalsIgnoreCase("true"))
        .orElse(standard);
  }

  /** A number without a unit, if the file has it. */
  Optional<Double> number(String key) {
    schemaOf(key);
    return item(key)
        .filter(item -> item instanceof Item.Scalar s && s.type() == Item.Kind.NUMBER)
        .map(item -> Double.parseDouble(((Item.Scalar) item).text()))
        .filter(Double::isFinite);
  }

  /** A whole number, from the file or from the schema's default. */
  int count(String key) {
    return number(key).map(Double::intValue).orElse(schemaOf(key).path("default").asInt());
  }

  /** Notes a problem with a key of this section. */
  void problem(String key, String what, String remedy) {
    reading.problems().add(lineOf(key), pathOf(key), what, remedy);
  }

  /** Notes a problem with this section as a whole. */
  void problem(String what, String remedy) {
    reading.problems().add(line, path, what, remedy);
  }

  /** Whether something is wrong at this key or below it already. */
  boolean isBad(String key) {
    return reading.problems().hasBelow(pathOf(key));
  }

  String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  private int lineOf(String key) {
    Item.Member member = members.get(key);
    return member == null ? line : member.keyLine();
  }

  /** What the file has under a key, as it stands. */
  Optional<Item> item(String key) {
    schemaOf(key);
    return Optional.ofNullable(members.get(key)).map(Item.Member::value);
  }

  private Item itemOf(String key) {
    return item(key).orElse(null);
  }

  private JsonNode schemaOf(String key) {
    JsonNode node = BriefSchema.key(schema, key);
    if (node.isMissingNode()) {
      throw new IllegalStateException("the schema has no key " + pathOf(key));
    }
    reading.asked().add(pathOf(key).replaceAll("\\[\\d+]", "[]"));
    return node;
  }

  /** The schema's default as if the file had it; an empty section if there is none. */
  private Item defaultItem(JsonNode node) {
    JsonNode standard = node.path("default");
    try {
      return unknown
          ? unknownItem()
          : standard.isMissingNode()
              ? new Item.Table(line, Map.of(), 1)
              : YamlTree.read(standard.toString());
    } catch (YamlException broken) {
      throw new IllegalStateException("the schema has a default that is no value", broken);
    }
  }
}
