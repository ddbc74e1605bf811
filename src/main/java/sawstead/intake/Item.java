package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value of a YAML file that still knows its line (counted from 1). */
sealed interface Item {

  /** The line on which the value begins. */
  int line();

  /** How many values this is, itself included, with every alias unfolded. */
  int size();

  /** The same as JSON, for the schema. */
  JsonNode json();

  /** In a sentence: {@code a list}. */
  String kind();

  /** What a plain scalar resolves to by the core schema of YAML 1.2. */
  enum Kind {
    TEXT("text"),
    NUMBER("a number"),
    SWITCH("true or false"),
    NOTHING("nothing");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** One word or number, as written. */
  record Scalar(int line, String text, Kind type) implements Item {
    @Override
    public int size() {
      return 1;
    }

    @Override
    public JsonNode json() {
      JsonNodeFactory json = JsonNodeFactory.instance;
      return switch (type) {
        case TEXT -> json.textNode(text);
        case NUMBER -> json.numberNode(new BigDecimal(text));
        case SWITCH -> json.booleanNode(text.equalsIgnoreCase("true"));
        case NOTHING -> json.nullNode();
      };
    }

    @Override
    public String kind() {
      return type.words;
    }
  }

  /** Values in a row. */
  record Listing(int line, List<Item> items, int size) implements Item {
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public JsonNode json() {
      ArrayNode array = JsonNodeFactory.instance.arrayNode(items.size());
      for (Item item : items) {
        array.add(item.json());
      }
      return array;
    }

    @Override
    public String kind() {
      return "a list";
    }
  }

  /** The value of a key, and the line of the key itself. */
  record Member(int keyLine, Item value) {}

  /** Values by key, in the order of the file. */
  record Table(int line, Map<String, Member> members, int size) implements Item {
    public Table {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    @Override
    public JsonNode json() {
      ObjectNode object = JsonNodeFactory.instance.objectNode();
      members.forEach((key, member) -> object.set(key, member.value().json()));
      return object;
    }

    @Override
    public String kind() {
      return "a section with keys";
    }
  }
}
