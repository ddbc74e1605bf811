package sawstead.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML 1.2 text to a tree with line numbers.
 *
 * <p>The tree is built from the parser's events, so that depth and size are known before anything
 * is unfolded: an alias stands for the very object of its anchor, and only its <em>count</em> of
 * values is added up. Refused are tags, duplicate keys, keys that are not plain words, a second
 * document, an alias inside its own anchor, more than {@link #DEEPEST} levels and more than {@link
 * #MOST_VALUES} values.
 */
final class YamlTree {

  /** Levels of nesting; a brief needs about eight. */
  static final int DEEPEST = 32;

  /** Values after unfolding; the largest brief of ours has about five hundred. */
  static final int MOST_VALUES = 200_000;

  private final Iterator<Event> events;
  private final Map<Anchor, Item> anchors = new HashMap<>();

  private YamlTree(Iterator<Event> events) {
    this.events = events;
  }

  /**
   * The tree of a text.
   *
   * @throws YamlException if it is not YAML, is empty, or goes over a limit
   */
  static Item read(String text) throws YamlException {
    try {
      return new YamlTree(YamlEvents.of(text)).document();
    } catch (MarkedYamlEngineException broken) {
      throw new YamlException(
          broken.getProblemMark().map(mark -> mark.getLine() + 1).orElse(0),
          "this is not YAML: " + plain(broken.getProblem()),
          "check the indentation (spaces, no tabs), the colons and the quotes here and just above");
    } catch (YamlEngineException broken) {
      throw new YamlException(
          0,
          "this is not YAML: " + plain(broken.getMessage()),
          "write the brief as plain UTF-8 text without control characters");
    }
  }

  private static String plain(String message) {
    return message == null ? "it cannot be read" : message.lines().findFirst().orElse("").strip();
  }

  private Item document() throws YamlException {
    Event event = events.next();
    while (event.getEventId() == Event.ID.StreamStart
        || event.getEventId() == Event.ID.DocumentStart) {
      event = events.next();
    }
    if (event.getEventId() == Event.ID.StreamEnd) {
      throw new YamlException(
          0, "the file is empty", "write a brief; `sawstead schema` describes every key");
    }
    Item root = item(event, 1);
    events.next();
    Event end = events.next();
    if (end.getEventId() != Event.ID.StreamEnd) {
      throw new YamlException(
          line(end), "a second document begins here", "keep one brief in a file; remove the `---`");
    }
    return root;
  }

  private Item item(Event event, int depth) throws YamlException {
    if (event instanceof AliasEvent alias) {
      Item known = anchors.get(alias.getAlias());
      if (known == null) {
        throw new YamlException(
            line(event),
            "the alias *" + alias.getAlias() + " has no finished anchor above it",
            "write the values out here");
      }
      return known;
    }
    refuseTag(event);
    if (depth > DEEPEST) {
      throw new YamlException(
          line(event),
          "more than " + DEEPEST + " levels are nested here",
          "a brief needs about eight; check the brackets");
    }
    Item item;
    if (event instanceof SequenceStartEvent) {
      item = listing(event, depth);
    } else if (event instanceof MappingStartEvent) {
      item = table(event, depth);
    } else {
      ScalarEvent scalar = (ScalarEvent) event;
      item = YamlScalar.resolve(line(event), scalar.getValue(), scalar.isPlain());
    }
    ((NodeEvent) event).getAnchor().ifPresent(anchor -> anchors.put(anchor, item));
    return item;
  }

  private Item listing(Event start, int depth) throws YamlException {
    List<Item> items = new ArrayList<>();
    int size = 1;
    for (Event event = events.next();
        event.getEventId() != Event.ID.SequenceEnd;
        event = events.next()) {
      Item item = item(event, depth + 1);
      size = sum(size, item, event);
      items.add(item);
    }
    return new Item.Listing(line(start), items, size);
  }

  private Item table(Event start, int depth) throws YamlException {
    Map<String, Item.Member> members = new LinkedHashMap<>();
    int size = 1;
    for (Event event = events.next();
        event.getEventId() != Event.ID.MappingEnd;
        event = events.next()) {
      String key = key(event);
      Item value = item(events.next(), depth + 1);
      size = sum(size, value, event);
      Item.Member earlier = members.put(key, new Item.Member(line(event), value));
      if (earlier != null) {
        throw new YamlException(
            line(event),
            "the key `"
                + key
                + "` stands here a second time (first in line "
                + earlier.keyLine()
                + ")",
            "keep one of the two");
      }
    }
    return new Item.Table(line(start), members, size);
  }

  private static String key(Event event) throws YamlException {
    if (event instanceof ScalarEvent scalar && scalar.getAnchor().isEmpty()) {
      refuseTag(event);
      return scalar.getValue();
    }
    throw new YamlException(
        line(event), "a key must be one plain word", "write `key: value`, or quote the text");
  }

  private static int sum(int size, Item item, Event event) throws YamlException {
    int total = size + item.size();
    if (total > MOST_VALUES) {
      throw new YamlException(
          line(event),
          "the file unfolds to more than " + MOST_VALUES + " values here",
          "remove aliases that repeat other aliases");
    }
    return total;
  }

  private static void refuseTag(Event event) throws YamlException {
    Optional<String> tag = Optional.empty();
    if (event instanceof ScalarEvent scalar) {
      tag = scalar.getTag();
    } else if (event instanceof CollectionStartEvent collection) {
      tag = collection.getTag();
    }
    if (tag.isPresent()) {
      throw new YamlException(
          line(event), "the tag " + tag.get() + " has no meaning here", "remove the tag");
    }
  }

  private static int line(Event event) {
    return event.getStartMark().map(Mark::getLine).orElse(-1) + 1;
  }
}
