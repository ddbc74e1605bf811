package sawstead.walk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sawstead.walk.Drawing.Stroke;

/**
 * The drawings by the path of what is measured. A key that has none shows the drawing of the
 * section around it.
 */
public final class Drawings {
  private static final JsonNode ALL = load();

  /** Shows the station, and measures nothing of it. */
  private static final String WHOLE = "station.wings.both";

  private Drawings() {}

  /** The drawing of a path; empty if neither it nor any section around it has one. */
  public static Optional<Drawing> of(String path) {
    String bare = path.replaceAll("\\[[0-9]+]", "[]");
    boolean own = true;
    while (!bare.isEmpty()) {
      JsonNode measure = ALL.path("measures").path(bare);
      if (!measure.isMissingNode()) {
        return Optional.of(drawing(measure, own));
      }
      own = false;
      bare = bare.endsWith("[]") ? bare.substring(0, bare.length() - 2) : around(bare);
    }
    return Optional.empty();
  }

  /** The drawing of a path, or of the whole station where it is of no thing that is drawn. */
  public static Drawing orWhole(String path) {
    return of(path).or(() -> of(WHOLE)).orElseThrow();
  }

  private static String around(String path) {
    int dot = path.lastIndexOf('.');
    return dot < 0 ? "" : path.substring(0, dot);
  }

  private static Drawing drawing(JsonNode measure, boolean own) {
    List<Stroke> strokes = new ArrayList<>();
    for (JsonNode stroke : ALL.path("views").path(measure.get(0).asText())) {
      strokes.add(stroke(stroke));
    }
    Optional<Stroke.Line> arrow =
        own && measure.size() == 5
            ? Optional.of(
                new Stroke.Line(at(measure, 1), at(measure, 2), at(measure, 3), at(measure, 4)))
            : Optional.empty();
    return new Drawing(strokes, arrow);
  }

  private static Stroke stroke(JsonNode s) {
    return switch (s.get(0).asText()) {
      case "line" -> new Stroke.Line(at(s, 1), at(s, 2), at(s, 3), at(s, 4));
      case "box" -> new Stroke.Box(at(s, 1), at(s, 2), at(s, 3), at(s, 4));
      case "round" -> new Stroke.Round(at(s, 1), at(s, 2), at(s, 3));
      case "word" -> new Stroke.Word(at(s, 1), at(s, 2), s.get(3).asText());
      default -> throw new IllegalStateException("the drawings have no stroke " + s);
    };
  }

  private static double at(JsonNode numbers, int index) {
    return numbers.get(index).asDouble();
  }

  /** All paths that have a drawing of their own; list indices left out. */
  static List<String> paths() {
    List<String> paths = new ArrayList<>();
    ALL.path("measures").fieldNames().forEachRemaining(paths::add);
    return paths;
  }

  private static JsonNode load() {
    try (InputStream in = Drawings.class.getResourceAsStream("/sawstead/walk/drawings.json")) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the drawings are missing from the program", e);
    }
  }
}
