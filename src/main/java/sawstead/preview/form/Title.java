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
  private final Label where;

  Title(String words, String of, String means) {
    label = label(words, "field-title", means);
    where = label(of, "field-of", means);
    getChildren().addAll(label, where);
    setMinWidth(WIDTH);
    setPrefWidth(WIDTH);
    setMaxWidth(WIDTH);
    setMinHeight(USE_PREF_SIZE);
  }

  private static Label label(String words, String style, String means) {
    Label label = new Label(words);
    label.getStyleClass().add(style);
    label.setWrapText(true);
    label.setTooltip(new Tooltip(means));
    label.setVisible(!words.isEmpty());
    return label;
  }

  private static double high(Label label) {
    return label.isVisible() ? label.prefHeight(WIDTH) : 0;
  }

  @Override
  protected double computePrefHeight(double width) {
    return high(label) + high(where);
  }

  @Override
  protected void layoutChildren() {
    double first = high(label);
    label.resizeRelocate(0, 0, WIDTH, first);
    where.resizeRelocate(0, first, WIDTH, high(where));
  }
}
