package sawstead.preview.look;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Holds the places of a window and shows them larger or smaller, as the eyes want it. */
public final class Magnifier extends Region {
  /** The smallest that can be chosen, times as large as usual. */
  public static final double LEAST = 0.8;

  /** The largest that can be chosen, times as large as usual. */
  public static final double MOST = 2;

  private static final double[] TIMES = {LEAST, 0.9, 1, 1.15, 1.3, 1.5, 1.75, MOST};
  private static final int USUAL = 2;

  private final Region held;
  private final Scale scale = new Scale(1, 1, 0, 0);
  private int step = USUAL;

  /**
   * @param held what is shown larger or smaller
   */
  public Magnifier(Region held) {
    this.held = held;
    held.getTransforms().add(scale);
    held.setManaged(false);
    getChildren().add((Node) held);
  }

  /** How many times as large as usual it is shown. */
  public double times() {
    return TIMES[step];
  }

  /** Shows it as near to so many times as large as can be chosen. */
  public void times(double wanted) {
    int nearest = 0;
    for (int k = 1; k < TIMES.length; k++) {
      if (Math.abs(TIMES[k] - wanted) < Math.abs(TIMES[nearest] - wanted)) {
        nearest = k;
      }
    }
    to(nearest);
  }

  /** One step larger, if there is one. */
  public void larger() {
    to(Math.min(TIMES.length - 1, step + 1));
  }

  /** One step smaller, if there is one. */
  public void smaller() {
    to(Math.max(0, step - 1));
  }

  /** As large as usual. */
  public void usual() {
    to(USUAL);
  }

  /** Light or dark. */
  public void look(Tokens tokens) {
    getStyleClass().remove("dark");
    if (tokens.dark()) {
      getStyleClass().add("dark");
    }
  }

  /** Lets Ctrl and +, - or 0 make it larger, smaller or usual. */
  public void keys(Scene scene) {
    for (KeyCode plus : List.of(KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD)) {
      key(scene, plus, this::larger);
    }
    for (KeyCode minus : List.of(KeyCode.MINUS, KeyCode.SUBTRACT)) {
      key(scene, minus, this::smaller);
    }
    key(scene, KeyCode.DIGIT0, this::usual);
  }

  private static void key(Scene scene, KeyCode code, Runnable does) {
    scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), does);
  }

  private void to(int wanted) {
    step = wanted;
    scale.setX(times());
    scale.setY(times());
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    held.resizeRelocate(0, 0, getWidth() / times(), getHeight() / times());
  }
}
