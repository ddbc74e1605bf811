package sawstead.preview.window;

import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/** Holds the window's places and shows them larger or smaller, as the eyes want it. */
final class Magnifier extends Region {
  private static final double[] TIMES = {0.8, 0.9, 1, 1.15, 1.3, 1.5, 1.75, 2};
  private static final int USUAL = 2;

  private final Region held;
  private final Scale scale = new Scale(1, 1, 0, 0);
  private int step = USUAL;

  Magnifier(Region held) {
    this.held = held;
    held.getTransforms().add(scale);
    held.setManaged(false);
    getChildren().add((Node) held);
  }

  /** How many times as large as usual it is shown. */
  double times() {
    return TIMES[step];
  }

  /** Shows it as near to so many times as large as can be chosen. */
  void times(double wanted) {
    int nearest = 0;
    for (int k = 1; k < TIMES.length; k++) {
      if (Math.abs(TIMES[k] - wanted) < Math.abs(TIMES[nearest] - wanted)) {
        nearest = k;
      }
    }
    to(nearest);
  }

  void larger() {
    to(Math.min(TIMES.length - 1, step + 1));
  }

  void smaller() {
    to(Math.max(0, step - 1));
  }

  void usual() {
    to(USUAL);
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
