package sawstead.preview.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.intake.BriefSpans;

/** Which values of a brief are written for some bodies: in their section, or under their name. */
public final class Written {
  private final List<String> ids;
  private final Map<String, BriefSpans.Span> spans;

  /**
   * @param about ids of the bodies
   */
  public Written(String text, List<String> about) {
    ids = List.copyOf(about);
    spans = BriefSpans.of(text);
  }

  /** Whether a value is of their section, or of the list item that bears their name. */
  public boolean isFor(String path) {
    return ids.stream().anyMatch(id -> isFor(path, id));
  }

  /**
   * How far a value is from them: 0 if it is written for one of them, 1 if for a unit of one, 2 if
   * for the station as a whole, 3 if for other units.
   */
  public int distance(String path) {
    if (isFor(path)) {
      return 0;
    }
    List<String> sections = List.of(path.split("[.\\[\\]]+"));
    for (String id : ids) {
      String unit = id.replaceAll("[-/].*", "");
      if (sections.stream().anyMatch(s -> s.startsWith(unit))) {
        return 1;
      }
    }
    return sections.get(0).equals("station") ? 2 : 3;
  }

  private boolean isFor(String path, String id) {
    String dotted = id.replace('/', '.');
    if (path.startsWith(dotted + ".") || path.startsWith(dotted + "[")) {
      return true;
    }
    int close = path.indexOf(']');
    if (close < 0) {
      return false;
    }
    String known = named(path.substring(0, close + 1)).orElse("");
    // An item without a name names nothing; a body is called by its item, its unit or its last
    // word.
    return !known.isEmpty()
        && (known.equals(id)
            || known.equals(id.substring(id.lastIndexOf('/') + 1))
            || id.startsWith(known + "/"));
  }

  private Optional<String> named(String item) {
    return Optional.ofNullable(spans.get(item + ".id"))
        .or(() -> Optional.ofNullable(spans.get(item + ".name")))
        .flatMap(BriefSpans.Span::value);
  }
}
