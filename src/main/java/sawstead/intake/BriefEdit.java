package sawstead.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One change of a brief's text that sets one value and leaves every other char as it is.
 *
 * @param from first char that is replaced
 * @param to one past the last char that is replaced
 * @param with what comes there instead
 */
public record BriefEdit(int from, int to, String with) {

  /** The text after the change. */
  public String in(String text) {
    return text.substring(0, from) + with + text.substring(to);
  }

  /**
   * The change that sets a value. A value that is there is replaced; a key that is not there comes
   * first in its section, with the sections that are missing around it. Each change is read back
   * before it is handed out; what YAML would misread is quoted.
   *
   * @param text of the brief
   * @param path such as {@code station.workingHeight}
   * @param value as a person writes it: {@code 38-1/2}
   * @return empty if the text is no YAML, or the value cannot stand there
   */
  public static Optional<BriefEdit> set(String text, String path, String value) {
    Map<String, BriefSpans.Span> before = BriefSpans.of(text);
    for (String written : List.of(value, "'" + value.replace("'", "''") + "'")) {
      Optional<BriefEdit> edit = draft(before, path, written);
      if (edit.isPresent() && reads(before, edit.get().in(text), path, value)) {
        return edit;
      }
    }
    return Optional.empty();
  }

  /** The change that writes a value, or puts a key first in its section if it is not there. */
  static Optional<BriefEdit> draft(
      Map<String, BriefSpans.Span> spans, String path, String written) {
    BriefSpans.Span span = spans.get(path);
    if (span != null && span.value().isPresent()) {
      return Optional.of(new BriefEdit(span.from(), span.to(), gap(span) + written));
    }
    return insert(spans, path, written);
  }

  /** The change that puts a key first in its section, with the sections that are missing. */
  private static Optional<BriefEdit> insert(
      Map<String, BriefSpans.Span> spans, String path, String written) {
    String key = path;
    String entry = written;
    while (!key.isEmpty()) {
      int dot = key.lastIndexOf('.');
      String section = dot < 0 ? "" : key.substring(0, dot);
      entry = key.substring(dot + 1) + ": " + entry;
      BriefSpans.Span around = spans.get(section);
      if (around != null) {
        return around.value().isPresent() || key.endsWith("]")
            ? Optional.empty()
            : Optional.of(insert(around, entry));
      }
      entry = "{" + entry + "}";
      key = section;
    }
    return Optional.empty();
  }

  /** A key without a value ends at its colon; a value needs a space there. */
  private static String gap(BriefSpans.Span span) {
    return span.from() == span.to() ? " " : "";
  }

  private static BriefEdit insert(BriefSpans.Span section, String entry) {
    if (!section.flow()) {
      String line = entry + "\n" + " ".repeat(section.indent());
      return new BriefEdit(section.first(), section.first(), line);
    }
    boolean isEmpty = section.first() == section.to();
    int at = isEmpty ? section.to() - 1 : section.first();
    return new BriefEdit(at, at, isEmpty ? entry : entry + ", ");
  }

  /** Whether the new text says the value at its place and everything else as before. */
  private static boolean reads(
      Map<String, BriefSpans.Span> before, String text, String path, String value) {
    Map<String, BriefSpans.Span> after = BriefSpans.of(text);
    BriefSpans.Span span = after.get(path);
    if (span == null || !span.value().equals(Optional.of(value))) {
      return false;
    }
    for (Map.Entry<String, BriefSpans.Span> entry : before.entrySet()) {
      BriefSpans.Span now = after.get(entry.getKey());
      if (!entry.getKey().equals(path)
          && (now == null || !now.value().equals(entry.getValue().value()))) {
        return false;
      }
    }
    return true;
  }
}
