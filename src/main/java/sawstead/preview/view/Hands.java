package sawstead.preview.view;

import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import sawstead.preview.scene.Eye;
import sawstead.preview.scene.Stance;

/** Mouse and keys on the floor: orbit, pan, zoom to the pointer, stand somewhere. */
final class Hands {
  private static final double DEGREES_PER_PIXEL = 0.35;
  private static final double KEY_DEGREES = 6;
  private static final double KEY_PIXELS = 40;
  private static final double ZOOM_STEP = 1.18;

  private final FloorView view;
  private double lastX;
  private double lastY;

  Hands(FloorView view) {
    this.view = view;
  }

  void attach() {
    view.addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
    view.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
    view.addEventHandler(ScrollEvent.SCROLL, this::scroll);
    view.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  private void press(MouseEvent event) {
    view.requestFocus();
    lastX = event.getX();
    lastY = event.getY();
  }

  private void drag(MouseEvent event) {
    double dx = event.getX() - lastX;
    double dy = event.getY() - lastY;
    lastX = event.getX();
    lastY = event.getY();
    boolean pan = event.getButton() != MouseButton.PRIMARY || event.isShiftDown();
    view.takenInHand();
    Eye eye = view.eye();
    view.look(
        pan
            ? eye.panned(dx, dy, view.getHeight())
            : eye.orbited(-dx * DEGREES_PER_PIXEL, dy * DEGREES_PER_PIXEL));
  }

  private void scroll(ScrollEvent event) {
    if (event.getDeltaY() != 0) {
      view.takenInHand();
      double factor = event.getDeltaY() > 0 ? 1 / ZOOM_STEP : ZOOM_STEP;
      Eye.Spot under = new Eye.Spot(event.getX(), event.getY());
      view.look(view.eye().zoomed(factor, under, view.getWidth(), view.getHeight()));
    }
    event.consume();
  }

  private void key(KeyEvent event) {
    if (event.isShortcutDown()) {
      return;
    }
    boolean pan = event.isShiftDown();
    switch (event.getCode()) {
      case LEFT -> step(pan, -1, 0);
      case RIGHT -> step(pan, 1, 0);
      case UP -> step(pan, 0, -1);
      case DOWN -> step(pan, 0, 1);
      case PLUS, ADD, EQUALS -> zoom(1 / ZOOM_STEP);
      case MINUS, SUBTRACT -> zoom(ZOOM_STEP);
      case DIGIT1, NUMPAD1 -> view.stand(Stance.INFEED);
      case DIGIT2, NUMPAD2 -> view.stand(Stance.OUTFEED);
      case DIGIT3, NUMPAD3 -> view.stand(Stance.LEFT);
      case DIGIT4, NUMPAD4 -> view.stand(Stance.RIGHT);
      case DIGIT5, NUMPAD5 -> view.stand(Stance.ABOVE);
      case DIGIT6, NUMPAD6 -> view.stand(Stance.CORNER);
      case F, HOME -> view.fit();
      case ESCAPE -> {
        if (!view.isMeasuring()) {
          return;
        }
        // Who laid the caliper out puts it away; nothing else is to be closed by the same key.
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void step(boolean pan, double x, double y) {
    view.takenInHand();
    Eye eye = view.eye();
    view.look(
        pan
            ? eye.panned(-x * KEY_PIXELS, -y * KEY_PIXELS, view.getHeight())
            : eye.orbited(x * KEY_DEGREES, -y * KEY_DEGREES));
  }

  private void zoom(double factor) {
    view.takenInHand();
    Eye.Spot middle = new Eye.Spot(view.getWidth() / 2, view.getHeight() / 2);
    view.look(view.eye().zoomed(factor, middle, view.getWidth(), view.getHeight()));
  }
}
