package sawstead.preview.window;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import sawstead.check.Severity;
import sawstead.preview.look.Signs;

/** One line of news: what changed, what was saved, what is wrong with the file. */
final class NewsLine extends HBox {
  private final Label says = new Label();
  private final ProgressBar progress = new ProgressBar();
  private final BusySign busy;
  private final Button open = new Button("open the folder");

  /**
   * @param busy stands at its right end
   */
  NewsLine(BusySign busy) {
    super(10);
    this.busy = busy;
    getStyleClass().add("news");
    setAlignment(Pos.CENTER_LEFT);
    says.setId("news");
    says.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(says, Priority.ALWAYS);
    progress.setId("progress");
    progress.setVisible(false);
    progress.managedProperty().bind(progress.visibleProperty());
    open.setId("open-folder");
    open.getStyleClass().add("more");
    open.setMinWidth(Region.USE_PREF_SIZE);
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

  /** How far it is, 0 to 1; negative when nothing is being done. */
  void progress(double share) {
    progress.setVisible(share >= 0);
    progress.setProgress(Math.max(0, share));
  }

  /** What was written where, and a way to see it. */
  void written(String words, Path folder) {
    note(words);
    open.setOnAction(
        e -> {
          if (!OpenFolder.open(folder)) {
            note("nothing on this computer opens folders; the files are in " + folder);
          }
        });
    getChildren().add(2, open);
  }

  private void tell(String words, Severity severity) {
    says.setText(words);
    says.setTooltip(new Tooltip(words));
    getChildren().setAll(Signs.of(severity, 18), says, busy, progress);
  }
}
