package sawstead.preview.view;

import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import sawstead.preview.scene.Eye;
import sawstead.solid.Vec;

/** The line that is measured, over the scene, with what it reads. */
final class CaliperLine extends Group {
  private final Line line = new Line();
  private final Circle start = new Circle(5);
  private final Circle end = new Circle(5);
  private final Label label = new Label();
  private Vec from;
  private Vec to;

  CaliperLine() {
    line.getStyleClass().add("caliper-line");
    start.getStyleClass().add("caliper-end");
    end.getStyleClass().add("caliper-end");
    label.getStyleClass().addAll("hover-label", "caliper-label");
    label.setId("caliper-label");
    getChildren().setAll(line, start, end, label);
    setMouseTransparent(true);
    setVisible(false);
  }

  /** One end only, until the other is pointed at. */
  void begin(Vec at, String words) {
    show(at, at, words);
  }

  void show(Vec a, Vec b, String words) {
    from = a;
    to = b;
    label.setText(words);
    setVisible(true);
  }

  void clear() {
    from = null;
    setVisible(false);
  }

  String words() {
    return isVisible() ? label.getText() : "";
  }

  void place(Eye eye, double width, double height) {
    if (from == null) {
      return;
    }
    Optional<Eye.Spot> a = eye.project(from, width, height);
    Optional<Eye.Spot> b = eye.project(to, width, height);
    setVisible(a.isPresent() && b.isPresent());
    if (isVisible()) {
      line.setStartX(a.get().x());
      line.setStartY(a.get().y());
      line.setEndX(b.get().x());
      line.setEndY(b.get().y());
      start.relocate(a.get().x() - 5, a.get().y() - 5);
      end.relocate(b.get().x() - 5, b.get().y() - 5);
      label.autosize();
      label.relocate(
          Math.min(width - label.getWidth() - 8, (a.get().x() + b.get().x()) / 2 + 12),
          Math.max(4, (a.get().y() + b.get().y()) / 2 - label.getHeight() - 6));
    }
  }
}
