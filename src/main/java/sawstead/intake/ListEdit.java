package sawstead.intake;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Changes of a brief's text that add an item to a list, take one away, or write out a section, and
 * leave every other item and every comment as they are. Each change is read back before it is
 * handed out.
 */
public final class ListEdit {
  private final String text;
  private final Map<String, BriefSpans.Span> spans;
  private final String list;

  private ListEdit(String text, String list) {
    this.text = text;
    this.list = list;
    spans = BriefSpans.of(text);
  }

  /**
   * The change that adds an item after the last one; a list that is not there yet is begun.
   *
   * @param text of the brief
   * @param list path of the list, such as {@code saw.slots}
   * @param item as YAML in one line, such as {@code {at: 120, width: 19, depth: 9.5}}
   * @return empty if the text is no YAML, or the list cannot stand there
   */
  public static Optional<BriefEdit> add(String text, String list, String item) {
    ListEdit edit = new ListEdit(text, list);
    int count = edit.count();
    return edit.adding(item).filter(e -> edit.reads(e.in(text), count + 1));
  }

  /**
   * The change that takes an item away.
   *
   * @param index from 0
   * @return empty if there is no such item
   */
  public static Optional<BriefEdit> remove(String text, String list, int index) {
    ListEdit edit = new ListEdit(text, list);
    int count = edit.count();
    if (index < 0 || index >= count) {
      return Optional.empty();
    }
    return Optional.of(edit.removing(index, count)).filter(e -> edit.reads(e.in(text), count - 1));
  }

  /**
   * The change that writes out a section or list that is not there yet, or for which a word such as
   * {@code none} stands.
   *
   * @param yaml in one line
   * @return empty if it is written out already, or cannot stand there
   */
  public static Optional<BriefEdit> writeOut(String text, String path, String yaml) {
    ListEdit edit = new ListEdit(text, path);
    BriefSpans.Span whole = edit.spans.get(path);
    if (whole != null && whole.value().isEmpty()) {
      return Optional.empty();
    }
    return BriefEdit.draft(edit.spans, edit.list, yaml)
        .filter(
            e -> {
              ListEdit now = new ListEdit(e.in(text), path);
              BriefSpans.Span there = now.spans.get(path);
              return there != null
                  && there.value().isEmpty()
                  && now.outside().equals(edit.outside());
            });
  }

  /** An item of a list with the keys that it cannot do without, each with its example. */
  public static String example(JsonNode list, int number) {
    JsonNode item = list.path("items");
    return item.path("properties").isEmpty()
        ? flow(item.path("examples").path(0))
        : sectionExample(item, number);
  }

  /**
   * A section with the keys that the schema requires or has something typical for, each with its
   * example.
   *
   * @param number comes after names, so that they differ
   */
  public static String sectionExample(JsonNode item, int number) {
    List<String> entries = new ArrayList<>();
    for (String key : keys(item)) {
      JsonNode value = item.path("properties").path(key);
      String written = value.path("enum").path(0).asText(flow(value.path("examples").path(0)));
      boolean name = key.equals("id") || key.equals("name");
      entries.add(key + ": " + (name ? written + "-" + number : written));
    }
    return "{" + String.join(", ", entries) + "}";
  }

  private static List<String> keys(JsonNode item) {
    List<String> keys = new ArrayList<>();
    item.path("required").forEach(k -> keys.add(k.asText()));
    item.path("properties")
        .properties()
        .forEach(
            e -> {
              boolean plain = !e.getValue().has("properties") && !e.getValue().has("items");
              if (e.getValue().has("x-typical") && plain && !keys.contains(e.getKey())) {
                keys.add(e.getKey());
              }
            });
    return keys;
  }

  private static String flow(JsonNode example) {
    return example.isValueNode() ? example.asText() : example.toString();
  }

  private int count() {
    int count = 0;
    while (spans.containsKey(list + "[" + count + "]")) {
      count++;
    }
    return count;
  }

  private Optional<BriefEdit> adding(String item) {
    BriefSpans.Span whole = spans.get(list);
    int count = count();
    if (whole == null || whole.value().isPresent()) {
      return BriefEdit.draft(spans, list, "[" + item + "]");
    }
    if (whole.flow()) {
      int close = whole.to() - 1;
      return Optional.of(new BriefEdit(close, close, (count == 0 ? "" : ", ") + item));
    }
    if (count == 0) {
      return Optional.empty();
    }
    int line = lineStart(dash(count - 1));
    String indent = text.substring(line, dash(count - 1));
    int end = lineEnd(spans.get(list + "[" + (count - 1) + "]").to());
    return Optional.of(new BriefEdit(end, end, "\n" + indent + "- " + item));
  }

  private BriefEdit removing(int index, int count) {
    BriefSpans.Span whole = spans.get(list);
    BriefSpans.Span item = spans.get(list + "[" + index + "]");
    if (count == 1) {
      return new BriefEdit(whole.flow() ? whole.from() : dash(0), whole.to(), "[]");
    }
    if (whole.flow()) {
      return index > 0
          ? new BriefEdit(spans.get(list + "[" + (index - 1) + "]").to(), item.to(), "")
          : new BriefEdit(item.from(), spans.get(list + "[1]").from(), "");
    }
    int from = lineStart(dash(index));
    int to = Math.min(text.length(), lineEnd(item.to()) + 1);
    return new BriefEdit(from, to, "");
  }

  /** The dash before an item of a list in lines. */
  private int dash(int index) {
    int at = spans.get(list + "[" + index + "]").from();
    return Math.max(0, text.lastIndexOf('-', Math.max(0, at - 1)));
  }

  private int lineStart(int at) {
    return text.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
  }

  private int lineEnd(int at) {
    int end = text.indexOf('\n', at);
    return end < 0 ? text.length() : end;
  }

  /** Whether the new text has so many items in the list, and all else as before. */
  private boolean reads(String after, int count) {
    ListEdit now = new ListEdit(after, list);
    return !now.spans.isEmpty() && now.count() == count && now.outside().equals(outside());
  }

  /** All values outside the list, by path. */
  private Map<String, String> outside() {
    Map<String, String> values = new TreeMap<>();
    spans.forEach(
        (path, span) -> {
          boolean inside = path.startsWith(list + "[") || path.startsWith(list + ".");
          if (!path.equals(list) && !inside) {
            span.value().ifPresent(v -> values.put(path, v));
          }
        });
    return values;
  }
}
