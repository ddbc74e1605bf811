package sawstead.preview.look;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Sentences in the window: they wrap, and are never cut off at the bottom. */
public final class Prose {
  private Prose() {}

  /**
   * A label of some words.
   *
   * @param style class in the style sheet
   */
  public static Label of(String words, String style) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    label.getStyleClass().add(style);
    return label;
  }
}
