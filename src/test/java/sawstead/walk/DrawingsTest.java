package sawstead.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sawstead.intake.BriefSchema;
import sawstead.walk.Drawing.Stroke;

class DrawingsTest {
  @Test
  void everyLengthThatMustBeMeasured_hasAnArrow() {
    List<String> without = new ArrayList<>();
    required(Node.root(BriefSchema.expanded()), without);
    assertEquals(List.of(), without);
  }

  private static void required(Node node, List<String> without) {
    for (Node key : node.keys()) {
      if (key.isSection()) {
        required(key, without);
      } else if (key.isList() && key.isAsked() && key.item(0).isSection()) {
        required(key.item(0), without);
      } else if (key.isAsked()
          && key.required()
          && key.schema().path("x-unit").asText().equals("mm")
          && key.schema().has("x-typical")
          && !key.path().contains("contents")
          && Drawings.of(key.path()).flatMap(Drawing::arrow).isEmpty()) {
        without.add(key.path());
      }
    }
  }

  @Test
  void everyDrawing_belongsToAKeyAndStaysOnItsPage() {
    for (String path : Drawings.paths()) {
      assertTrue(exists(path), path);
      Drawing drawing = Drawings.of(path.replace("[]", "[0]")).orElseThrow();
      assertFalse(drawing.strokes().isEmpty(), path);
      drawing.arrow().ifPresent(a -> assertTrue(isOnPage(a), path + " " + a));
      assertTrue(drawing.strokes().stream().allMatch(DrawingsTest::isOnPage), path);
    }
  }

  private static boolean exists(String path) {
    Node node = Node.root(BriefSchema.expanded());
    for (String step : path.split("\\.")) {
      String key = step.replace("[]", "");
      node = node.keys().stream().filter(n -> n.key().equals(key)).findFirst().orElse(null);
      if (node == null) {
        return false;
      }
      node = step.endsWith("[]") ? node.item(0) : node;
    }
    return true;
  }

  private static boolean isOnPage(Stroke stroke) {
    if (stroke instanceof Stroke.Line line) {
      return isOnPage(line.fromX(), line.fromY()) && isOnPage(line.toX(), line.toY());
    }
    if (stroke instanceof Stroke.Box box) {
      return isOnPage(box.x(), box.y()) && isOnPage(box.x() + box.width(), box.y() + box.height());
    }
    if (stroke instanceof Stroke.Round round) {
      return isOnPage(round.x(), round.y());
    }
    Stroke.Word word = (Stroke.Word) stroke;
    return isOnPage(word.x(), word.y()) && isOnPage(word.x() + word.text().length() - 1, word.y());
  }

  private static boolean isOnPage(double x, double y) {
    return x >= 0 && x <= Drawing.WIDE && y >= 0 && y <= Drawing.HIGH;
  }

  @Test
  void keyWithoutADrawing_showsThatOfItsSection() {
    Drawing drawing = Drawings.of("saw.throat.somethingNew").orElseThrow();
    assertEquals(Drawings.of("saw.throat").orElseThrow().strokes(), drawing.strokes());
    assertTrue(drawing.arrow().isEmpty());
    assertTrue(Drawings.of("name").isEmpty());
  }
}
