package sawstead.preview.look;

import java.util.function.Consumer;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * A region that is drawn by hand and stays sharp when the window is magnified: a canvas alone is
 * drawn at its own size first and blown up then.
 */
public final class SharpCanvas extends Region {
  private final Canvas canvas = new Canvas();
  private final Consumer<GraphicsContext> draws;

  /**
   * @param draws draws all of it, in the region's own coordinates, on a cleared canvas
   */
  public SharpCanvas(Consumer<GraphicsContext> draws) {
    this.draws = draws;
    canvas.setManaged(false);
    getChildren().add(canvas);
    localToSceneTransformProperty().addListener(o -> requestLayout());
  }

  /** Clears it and draws it anew. */
  public void redraw() {
    GraphicsContext g = canvas.getGraphicsContext2D();
    double times = times();
    g.setTransform(times, 0, 0, times, 0, 0);
    g.clearRect(0, 0, getWidth(), getHeight());
    draws.accept(g);
  }

  @Override
  protected void layoutChildren() {
    double times = times();
    canvas.setWidth(getWidth() * times);
    canvas.setHeight(getHeight() * times);
    // Shrunk about its middle, which therefore must lie where the middle of the region is.
    canvas.setScaleX(1 / times);
    canvas.setScaleY(1 / times);
    canvas.relocate(getWidth() * (1 - times) / 2, getHeight() * (1 - times) / 2);
    redraw();
  }

  /** How much larger this is drawn than it is. */
  private double times() {
    return Math.max(1, getLocalToSceneTransform().getMxx());
  }
}
