package sawstead.preview.tags;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import sawstead.check.Finding;
import sawstead.check.Severity;
import sawstead.check.Words;
import sawstead.preview.look.Prose;
import sawstead.preview.look.Signs;

/** One finding on its tag: sign and word, what is so, where, what to do. */
final class HangTag extends VBox {
  private final Runnable does;
  private final Runnable changes;

  HangTag(Finding finding, Runnable does, Runnable changes) {
    super(5);
    this.does = does;
    this.changes = changes;
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setOnMouseClicked(e -> fire());
    setOnKeyPressed(this::key);
    getStyleClass().setAll("hang-tag", finding.severity().word());
    Label word = new Label(finding.severity().word());
    word.getStyleClass().addAll("tag-word", finding.severity().word());
    Label rule = new Label(finding.rule());
    rule.getStyleClass().add("tag-rule");
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Circle hole = new Circle(4);
    hole.getStyleClass().add("tag-hole");
    HBox head = new HBox(8, Signs.of(finding.severity(), 20), word, gap, rule, hole);
    head.setAlignment(Pos.CENTER_LEFT);
    Label says = Prose.of(finding.says(), "tag-says");
    Label where = Prose.of(Words.some(finding.about()), "tag-where");
    Label remedy = Prose.of(finding.remedy(), "tag-remedy");
    getChildren().addAll(head, says, where, remedy);
    if (finding.severity() != Severity.NOTE) {
      Button change = new Button("what can I change?");
      change.getStyleClass().add("more");
      change.setOnAction(e -> change());
      getChildren().add(change);
    }
    setAccessibleText(finding.severity().word() + ": " + finding.says() + ". " + finding.remedy());
  }

  /** As a click does. */
  void fire() {
    does.run();
  }

  /** As its button does. */
  void change() {
    changes.run();
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
      fire();
      event.consume();
    }
  }
}
