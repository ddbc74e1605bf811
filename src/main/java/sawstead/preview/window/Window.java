package sawstead.preview.window;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Theme;
import sawstead.preview.look.Tokens;

/** Opens the window of a brief. */
public final class Window {
  private static final double WIDTH = 1480;
  private static final double HEIGHT = 920;

  private Window() {}

  /**
   * Shows a brief until the window is closed.
   *
   * @param file the brief; need not be right, and need not stay there
   * @param dark dark look
   * @throws sawstead.preview.PreviewException if this machine cannot show it
   */
  public static void show(Path file, boolean dark) {
    Toolkit.start();
    CountDownLatch closed = new CountDownLatch(1);
    Toolkit.call(
        () -> {
          Stage stage = stage(file, dark, WIDTH, HEIGHT);
          stage.setOnHidden(e -> closed.countDown());
          return stage;
        });
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** A window, shown, no larger than the screen. On JavaFX's thread only. */
  static Stage stage(Path file, boolean dark, double wantedWidth, double wantedHeight) {
    Stage stage = new Stage();
    Desk desk = new Desk(file, stage::setTitle);
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double width = Math.min(wantedWidth, screen.getWidth());
    double height = Math.min(wantedHeight, screen.getHeight());
    Scene scene = new Scene(desk.root(), width, height);
    scene.getStylesheets().add(Tokens.address());
    desk.keys(scene);
    dress(desk, dark);
    desk.onDark(wanted -> dress(desk, wanted));
    stage.setScene(scene);
    stage.setOnCloseRequest(
        e -> {
          if (!desk.mayClose()) {
            e.consume();
          }
        });
    stage.addEventHandler(javafx.stage.WindowEvent.WINDOW_HIDDEN, e -> desk.close());
    stage.show();
    return stage;
  }

  private static void dress(Desk desk, boolean dark) {
    Theme.put(dark);
    desk.look(Tokens.of(dark));
  }
}
