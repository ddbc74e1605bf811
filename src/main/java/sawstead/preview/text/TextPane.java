package sawstead.preview.text;

import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import sawstead.preview.bench.Flaw;
import sawstead.preview.look.Tokens;

/** The editor: text, line numbers, and below it what is wrong. */
public final class TextPane extends BorderPane {
  private static final double FLAWS_HEIGHT = 190;

  private final TextArea area = new TextArea();
  private final Gutter gutter = new Gutter(area);
  private final VBox flaws = new VBox(8);
  private final ScrollPane flawScroll = new ScrollPane(flaws);

  /** An empty editor. */
  public TextPane() {
    area.setId("brief-text");
    area.getStyleClass().add("brief-text");
    area.setAccessibleText("the brief as text");
    area.addEventFilter(KeyEvent.KEY_PRESSED, this::tab);
    flaws.getStyleClass().add("flaws");
    flawScroll.setFitToWidth(true);
    flawScroll.setMaxHeight(FLAWS_HEIGHT);
    flawScroll.getStyleClass().add("flaw-scroll");
    setLeft(gutter);
    setCenter(area);
  }

  /** A brief may have no tabs, and Tab is the way out: what Ctrl+Tab is in any text. */
  private void tab(KeyEvent event) {
    if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
      event.consume();
      area.fireEvent(
          new KeyEvent(
              KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, event.isShiftDown(), true, false, false));
    }
  }

  /** The text as it is being typed. */
  public ReadOnlyStringProperty textProperty() {
    return area.textProperty();
  }

  /** Another text, as after opening a file: undo does not lead back behind it. */
  public void open(String text) {
    area.setText(text);
    area.positionCaret(0);
  }

  /** Another text as if it had been typed: undo leads back to the one before. */
  public void replaceAll(String text) {
    area.replaceText(0, area.getLength(), text);
    area.positionCaret(0);
  }

  /** Replaces part of the text as if typed, so that undo knows of it. */
  public void replace(int from, int to, String with) {
    area.replaceText(from, to, with);
  }

  /** Takes the last change back. */
  public void undo() {
    if (area.isUndoable()) {
      area.undo();
    }
  }

  /** Makes the change again that was taken back last. */
  public void redo() {
    if (area.isRedoable()) {
      area.redo();
    }
  }

  /** Says what is wrong, at its lines. */
  public void tell(List<Flaw> wrong) {
    gutter.mark(wrong.stream().map(Flaw::line).filter(l -> l > 0).collect(Collectors.toSet()));
    flaws.getChildren().clear();
    for (Flaw flaw : wrong) {
      String line = flaw.line() > 0 ? "line " + flaw.line() + ": " : "";
      Button button = new Button(line + flaw.what() + "\n" + flaw.remedy());
      button.setWrapText(true);
      button.setMaxWidth(Double.MAX_VALUE);
      button.getStyleClass().setAll("flaw");
      button.setOnAction(e -> go(flaw.line()));
      flaws.getChildren().add(button);
    }
    setBottom(wrong.isEmpty() ? null : flawScroll);
  }

  /** Puts the caret on a line and selects it. */
  public void go(int line) {
    if (line < 1) {
      return;
    }
    String text = area.getText();
    int start = 0;
    for (int k = 1; k < line && start >= 0; k++) {
      start = text.indexOf('\n', start) + 1;
      if (start == 0) {
        return;
      }
    }
    int end = text.indexOf('\n', start);
    area.requestFocus();
    area.selectRange(start, end < 0 ? text.length() : end);
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    gutter.look(tokens);
  }
}
