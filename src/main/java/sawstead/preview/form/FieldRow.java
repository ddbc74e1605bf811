package sawstead.preview.form;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import sawstead.measure.Unit;

/** One value of the form: its title, where it is written or chosen, and a slider for a number. */
final class FieldRow extends VBox {
  /** In a row narrower than that, pixels, the title stands above. */
  private static final double NARROW = 360;

  private static final double GAP = 8;
  private static final double BELOW = 4;

  private final Field field;
  private final Title title;
  private final HBox line;
  private final FormPane.Changes changes;
  private final TextField text = new TextField();
  private final ComboBox<String> choice = new ComboBox<>();
  private final MarkedSlider track = new MarkedSlider();
  private final Slider slider = track.slider();
  private Unit unit = Unit.MM;
  private Optional<Range> range = Optional.empty();
  private Optional<String> held = Optional.empty();
  private boolean filling;
  private boolean typing;

  FieldRow(Field field, FormPane.Changes changes) {
    this(field, "", changes);
  }

  /**
   * @param of what it is a value of, in words, where the row does not stand among its like; empty
   *     where it does
   */
  FieldRow(Field field, String of, FormPane.Changes changes) {
    super(2);
    this.field = field;
    this.changes = changes;
    getStyleClass().add("field-row");
    setId("row-" + field.path());
    title = new Title(field.title(), of, field.means() + "\n" + field.path());
    line = new HBox(GAP, title);
    line.setAlignment(Pos.CENTER_LEFT);
    getChildren().add(line);
    if (field.choices().isEmpty()) {
      addText();
    } else {
      addChoice();
    }
    // Not at once: whoever lays this row out has already asked how high it is.
    widthProperty().addListener(o -> Platform.runLater(this::turn));
    focusWithinProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                changes.attend(field.path());
              }
            });
  }

  private void addText() {
    text.setPromptText(field.hint());
    text.setAccessibleText(field.title());
    text.setTooltip(new Tooltip(field.means()));
    HBox.setHgrow(text, Priority.ALWAYS);
    text.textProperty().addListener((o, was, is) -> changed(is));
    text.focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                fill(held, unit);
              }
            });
    line.getChildren().add(text);
    if (field.scale() != Scale.NONE) {
      text.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
      line.getChildren().addAll(step("\u2212", false), step("+", true));
      addSlider();
    }
  }

  private void addSlider() {
    slider.setAccessibleText(field.title());
    slider.valueProperty().addListener((o, was, is) -> slid(is.doubleValue()));
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                range.ifPresent(r -> changed(r.text(slider.getValue())));
              }
            });
    below(track);
    sliderFollows("");
  }

  /** Puts something under the value, as wide as it. */
  void below(Node node) {
    getChildren().add(node);
    indent(node);
  }

  private boolean isNarrow() {
    return title.getParent() == this;
  }

  private void indent(Node node) {
    double left = isNarrow() ? 0 : Title.WIDTH + GAP;
    VBox.setMargin(node, new Insets(0, 0, BELOW, left));
  }

  private void turn() {
    if (getWidth() < NARROW == isNarrow()) {
      return;
    }
    if (isNarrow()) {
      getChildren().remove(title);
      line.getChildren().add(0, title);
    } else {
      line.getChildren().remove(title);
      getChildren().add(0, title);
    }
    getChildren().stream().filter(n -> n != title && n != line).forEach(this::indent);
  }

  private void slid(double thumb) {
    if (filling || range.isEmpty()) {
      return;
    }
    String value = range.get().text(thumb);
    filling = true;
    text.setText(value);
    filling = false;
    if (slider.isValueChanging()) {
      changes.wouldSet(field.path(), value);
    } else {
      changes.set(field.path(), value);
    }
  }

  /** The slider keeps its range as long as the value lies well within it. */
  private void sliderFollows(String value) {
    if (field.scale() == Scale.NONE || slider.isValueChanging()) {
      return;
    }
    Optional<Range> fresh = Range.of(field, value, unit);
    track.setVisible(fresh.isPresent());
    track.setManaged(fresh.isPresent());
    if (fresh.isEmpty()) {
      range = fresh;
      return;
    }
    lay(range.filter(r -> r.holds(fresh.get())).orElse(fresh.get()), fresh.get().at());
  }

  private void lay(Range along, double at) {
    range = Optional.of(along);
    boolean before = filling;
    filling = true;
    slider.setMin(along.low());
    slider.setMax(along.high());
    slider.setBlockIncrement(along.mark());
    slider.setValue(at);
    filling = before;
  }

  private void addChoice() {
    choice.getItems().setAll(field.choices());
    choice.setPromptText(field.hint());
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setAccessibleText(field.title());
    HBox.setHgrow(choice, Priority.ALWAYS);
    choice.valueProperty().addListener((o, was, is) -> changed(is));
    line.getChildren().add(choice);
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
    String now = text.getText();
    Optional<String> next =
        field.scale() == Scale.LENGTH
            ? Steps.next(now, unit, up)
            : Range.of(field, now, unit).map(r -> r.text(r.at() + (up ? r.mark() : -r.mark())));
    next.ifPresent(text::setText);
  }

  Field field() {
    return field;
  }

  /** Marks the value at which what was found wrong is mended, or no longer. */
  void mark(Optional<String> value) {
    Optional<Range> place = value.flatMap(v -> Range.of(field, v, unit));
    if (place.isPresent() && range.isPresent() && !slider.isValueChanging()) {
      lay(range.get().reaching(place.get().at()), slider.getValue());
    }
    track.mark(place.map(r -> OptionalDouble.of(r.at())).orElse(OptionalDouble.empty()));
  }

  /**
   * Shows what the text of the brief says; does not count as filling in. What is just being typed
   * here is left as it is: the text may say the same with other letters.
   */
  void fill(Optional<String> value, Unit inUnit) {
    held = value;
    unit = inUnit;
    filling = true;
    if (!field.choices().isEmpty()) {
      choice.setValue(value.orElse(null));
    } else if (!typing && !slider.isValueChanging()) {
      if (!text.getText().equals(value.orElse(""))) {
        text.setText(value.orElse(""));
      }
    }
    sliderFollows(value.orElse(""));
    filling = false;
  }

  private void changed(String value) {
    if (!filling && value != null && !value.isBlank()) {
      typing = true;
      if (value.equals(Field.WRITE_OUT)) {
        changes.writeOut(field.path());
      } else {
        changes.set(field.path(), value.strip());
      }
      typing = false;
    }
  }
}
