package sawstead.preview.window;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import sawstead.check.Severity;
import sawstead.preview.look.Signs;

/** One line of news: what changed, what was saved, what is wrong with the file. */
final class NewsLine extends HBox {
  private final Label says = new Label();
  private final ProgressBar progress = new ProgressBar();

  NewsLine() {
    super(10);
    getStyleClass().add("news");
    setAlignment(Pos.CENTER_LEFT);
    says.setId("news");
    says.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(says, Priority.ALWAYS);
    progress.setVisible(false);
    getChildren().setAll(says, progress);
    note(
        "drag to turn, right button to move, wheel to come nearer; 1 to 6 stand somewhere, F fits");
  }

  void note(String words) {
    says.getStyleClass().setAll("label", "news-says");
    tell(words, Severity.NOTE);
  }

  void mind(String words) {
    says.getStyleClass().setAll("label", "news-says", "mind");
    tell(words, Severity.MIND);
  }

  void change(List<String> changes) {
    note("changed: " + String.join("  \u00b7  ", changes));
  }

  void busy(boolean working) {
    progress.setVisible(working);
  }

  private void tell(String words, Severity severity) {
    says.setText(words);
    says.setTooltip(new Tooltip(words));
    getChildren().setAll(Signs.of(severity, 18), says, progress);
  }
}
