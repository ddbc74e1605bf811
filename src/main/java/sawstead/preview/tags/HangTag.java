package sawstead.preview.tags;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import sawstead.check.Finding;
import sawstead.check.Words;
import sawstead.preview.look.Signs;

/** One finding on its tag: sign and word, what is so, where, what to do. */
final class HangTag extends Button {
  HangTag(Finding finding) {
    getStyleClass().setAll("hang-tag", finding.severity().word());
    setMaxWidth(Double.MAX_VALUE);
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
    Label says = text(finding.says(), "tag-says");
    Label where = text(Words.some(finding.about()), "tag-where");
    Label remedy = text(finding.remedy(), "tag-remedy");
    VBox body = new VBox(5, head, says, where, remedy);
    body.setMouseTransparent(true);
    setGraphic(body);
    body.prefWidthProperty().bind(widthProperty().subtract(28));
    setAccessibleText(
        finding.severity().word() + ": " + finding.says() + ". " + finding.remedy());
  }

  private static Label text(String words, String style) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
