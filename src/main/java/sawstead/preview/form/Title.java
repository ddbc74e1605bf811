package sawstead.preview.form;

import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/**
 * The title of a row, wrapped at a fixed width. A label that wraps makes all around it depend on
 * their widths, and JavaFX then measures every row of the form anew for every letter that changes;
 * so the label stands in a box of which the height is known.
 */
final class Title extends Region {
  /** Pixels. */
  static final double WIDTH = 165;

  private final Label label;

  Title(String words, String means) {
    label = new Label(words);
    label.getStyleClass().add("field-title");
    label.setWrapText(true);
    label.setTooltip(new Tooltip(means));
    getChildren().add(label);
    setMinWidth(WIDTH);
    setPrefWidth(WIDTH);
    setMaxWidth(WIDTH);
    setMinHeight(USE_PREF_SIZE);
  }

  @Override
  protected double computePrefHeight(double width) {
    return label.prefHeight(WIDTH);
  }

  @Override
  protected void layoutChildren() {
    label.resizeRelocate(0, 0, WIDTH, getHeight());
  }
}
