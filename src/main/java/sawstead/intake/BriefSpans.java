package sawstead.intake;

import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Where in the text of a brief each value stands, so that one value can be changed and every other
 * byte, comments and order included, stays as it is.
 */
public final class BriefSpans {

  /**
   * A value in the text.
   *
   * @param from first char
   * @param to one past its last char
   * @param value the word or number as read; empty for a section or a list
   * @param flow whether a section or list is written in brackets
   * @param first where the first key of a section stands; {@code to} if it has none
   * @param indent columns before the first key of a section
   */
  public record Span(
      int from, int to, Optional<String> value, boolean flow, int first, int indent) {}

  private final String text;
  private final Map<String, Span> spans = new LinkedHashMap<>();
  private final Iterator<Event> events;

  private BriefSpans(String text) {
    this.text = text;
    events = YamlEvents.of(text);
  }

  /**
   * The spans of all values by path, such as {@code saw.slots[0].width}, in the order of the text;
   * the whole is the empty path. Empty if the text is no YAML, or has what no brief may have: a key
   * that is no plain word, as a stray bracket makes one, or more levels than {@link
   * YamlTree#DEEPEST}.
   */
  public static Map<String, Span> of(String text) {
    try {
      BriefSpans reader = new BriefSpans(text);
      Event event = reader.events.next();
      while (event.getEventId() == Event.ID.StreamStart
          || event.getEventId() == Event.ID.DocumentStart) {
        event = reader.events.next();
      }
      if (event.getEventId() != Event.ID.StreamEnd) {
        reader.value("", event, 1);
      }
      return Collections.unmodifiableMap(reader.spans);
    } catch (YamlEngineException broken) {
      return Map.of();
    }
  }

  private int value(String path, Event event, int depth) {
    if (depth > YamlTree.DEEPEST) {
      throw new YamlEngineException("nested too deep for a brief");
    }
    if (event instanceof ScalarEvent scalar) {
      int from = at(event.getStartMark());
      int to = at(event.getEndMark());
      spans.put(path, new Span(from, to, Optional.of(scalar.getValue()), false, to, 0));
      return to;
    }
    if (event instanceof AliasEvent) {
      return at(event.getEndMark());
    }
    boolean flow = ((CollectionStartEvent) event).getFlowStyle() == FlowStyle.FLOW;
    return event instanceof MappingStartEvent
        ? section(path, event, flow, depth)
        : list(path, (SequenceStartEvent) event, flow, depth);
  }

  private int section(String path, Event start, boolean flow, int depth) {
    spans.put(path, null);
    int first = -1;
    int indent = 0;
    int last = at(start.getEndMark());
    Event event = events.next();
    while (event.getEventId() != Event.ID.MappingEnd) {
      if (first < 0) {
        first = at(event.getStartMark());
        indent = event.getStartMark().map(Mark::getColumn).orElse(0);
      }
      String key = key(event);
      last = value(path.isEmpty() ? key : path + "." + key, events.next(), depth + 1);
      event = events.next();
    }
    int to = flow ? at(event.getEndMark()) : last;
    spans.put(
        path,
        new Span(
            at(start.getStartMark()), to, Optional.empty(), flow, first < 0 ? to : first, indent));
    return to;
  }

  private static String key(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getValue();
    }
    throw new YamlEngineException("a key of a brief is one plain word");
  }

  private int list(String path, SequenceStartEvent start, boolean flow, int depth) {
    spans.put(path, null);
    int number = 0;
    int last = at(start.getEndMark());
    Event event = events.next();
    while (event.getEventId() != Event.ID.SequenceEnd) {
      last = value(path + "[" + number++ + "]", event, depth + 1);
      event = events.next();
    }
    int to = flow ? at(event.getEndMark()) : last;
    spans.put(path, new Span(at(start.getStartMark()), to, Optional.empty(), flow, to, 0));
    return to;
  }

  /** Marks count code points; the text counts chars. */
  private int at(Optional<Mark> mark) {
    return text.offsetByCodePoints(0, mark.map(Mark::getIndex).orElse(0));
  }
}
