package sawstead.preview.form;

import java.util.OptionalDouble;
import javafx.scene.control.Slider;
import javafx.scene.layout.Region;

/** A slider with a mark on its track, at which something changes. */
final class MarkedSlider extends Region {
  private static final double MARK_WIDTH = 3;
  private static final double MARK_HEIGHT = 18;

  private final Slider slider = new Slider();
  private final Region mark = new Region();
  private OptionalDouble at = OptionalDouble.empty();

  MarkedSlider() {
    slider.getStyleClass().add("field-slider");
    mark.getStyleClass().add("mend-mark");
    mark.setMouseTransparent(true);
    mark.setVisible(false);
    getChildren().addAll(slider, mark);
    slider.minProperty().addListener(o -> requestLayout());
    slider.maxProperty().addListener(o -> requestLayout());
  }

  Slider slider() {
    return slider;
  }

  /** Puts the mark at a place of the slider, or takes it away. */
  void mark(OptionalDouble place) {
    at = place;
    requestLayout();
  }

  @Override
  protected double computePrefHeight(double width) {
    return Math.max(MARK_HEIGHT, slider.prefHeight(width));
  }

  @Override
  protected double computePrefWidth(double height) {
    return slider.prefWidth(height);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    slider.resizeRelocate(0, 0, width, height);
    boolean seen =
        at.isPresent()
            && at.getAsDouble() >= slider.getMin()
            && at.getAsDouble() <= slider.getMax();
    mark.setVisible(seen);
    if (seen) {
      // The thumb's middle runs from half a thumb inside one end to half a thumb inside the other.
      var thumb = slider.lookup(".thumb");
      double half = thumb == null ? 0 : thumb.getLayoutBounds().getWidth() / 2;
      double share = (at.getAsDouble() - slider.getMin()) / (slider.getMax() - slider.getMin());
      double x = half + share * (width - 2 * half);
      mark.resizeRelocate(x - MARK_WIDTH / 2, (height - MARK_HEIGHT) / 2, MARK_WIDTH, MARK_HEIGHT);
    }
  }
}
