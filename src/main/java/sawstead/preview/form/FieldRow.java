package sawstead.preview.form;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import sawstead.measure.Unit;

/** One value of the form: its title, and where it is written or chosen. */
final class FieldRow extends HBox {
  private final Field field;
  private final Consumer<String> filled;
  private final TextField text = new TextField();
  private final ComboBox<String> choice = new ComboBox<>();
  private Unit unit = Unit.MM;
  private boolean filling;

  FieldRow(Field field, Consumer<String> filled) {
    super(8);
    this.field = field;
    this.filled = filled;
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("field-row");
    setId("row-" + field.path());
    Label title = new Label(field.title());
    title.getStyleClass().add("field-title");
    title.setWrapText(true);
    title.setPrefWidth(190);
    title.setMinWidth(150);
    title.setTooltip(new Tooltip(field.means()));
    getChildren().add(title);
    if (field.choices().isEmpty()) {
      addText();
    } else {
      addChoice();
    }
  }

  private void addText() {
    text.setPromptText(field.hint());
    text.setAccessibleText(field.title());
    text.setTooltip(new Tooltip(field.means()));
    HBox.setHgrow(text, Priority.ALWAYS);
    text.textProperty().addListener((o, was, is) -> changed(is));
    getChildren().add(text);
    if (field.length()) {
      text.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
      getChildren().addAll(step("\u2212", false), step("+", true));
    }
  }

  private void addChoice() {
    choice.getItems().setAll(field.choices());
    choice.setPromptText(field.hint());
    choice.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(choice, Priority.ALWAYS);
    choice.valueProperty().addListener((o, was, is) -> changed(is));
    getChildren().add(choice);
  }

  private Button step(String sign, boolean up) {
    Button button = new Button(sign);
    button.getStyleClass().add("step");
    button.setFocusTraversable(false);
    button.setOnAction(e -> step(up));
    return button;
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
      step(event.getCode() == KeyCode.UP);
      event.consume();
    }
  }

  private void step(boolean up) {
    Steps.next(text.getText(), unit, up).ifPresent(text::setText);
  }

  Field field() {
    return field;
  }

  /** Shows what the text of the brief says; does not count as filling in. */
  void fill(Optional<String> value, Unit inUnit) {
    unit = inUnit;
    filling = true;
    if (!field.choices().isEmpty()) {
      choice.setValue(value.orElse(null));
    } else if (!text.isFocused() && !text.getText().equals(value.orElse(""))) {
      text.setText(value.orElse(""));
    }
    filling = false;
  }

  private void changed(String value) {
    if (!filling && value != null && !value.isBlank()) {
      filled.accept(value.strip());
    }
  }
}
