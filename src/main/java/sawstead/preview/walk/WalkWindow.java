package sawstead.preview.walk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.Scene;
import javafx.stage.Stage;
import sawstead.preview.PreviewException;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Theme;
import sawstead.preview.look.Tokens;
import sawstead.preview.window.Window;

/** Opens the interview; once the brief is written, the station that comes of it. */
public final class WalkWindow {
  private static final double WIDTH = 980;
  private static final double HEIGHT = 760;

  private WalkWindow() {}

  /**
   * Asks until the window is closed or the brief is written, and then shows the station.
   *
   * @param brief to be written
   * @param dark dark look
   * @throws PreviewException if this machine cannot show it
   */
  public static void show(Path brief, boolean dark) {
    Toolkit.start();
    CountDownLatch closed = new CountDownLatch(1);
    AtomicReference<Path> written = new AtomicReference<>();
    Toolkit.call(
        () -> {
          Stage stage = stage(brief, dark, WIDTH, HEIGHT, written::set);
          stage.setOnHidden(e -> closed.countDown());
          return stage;
        });
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (written.get() != null) {
      Window.show(written.get(), dark);
    }
  }

  /** The window, shown. On JavaFX's thread only. */
  static Stage stage(
      Path brief,
      boolean dark,
      double width,
      double height,
      java.util.function.Consumer<Path> written) {
    Stage stage = new Stage();
    WalkPane pane;
    try {
      pane =
          new WalkPane(
              brief,
              path -> {
                written.accept(path);
                stage.hide();
              });
    } catch (IOException e) {
      throw new PreviewException(
          "the answers given before cannot be read",
          brief + ".answers",
          "check your rights there, or move the file away to begin anew");
    }
    Theme.put(dark);
    pane.look(Tokens.of(dark));
    Scene scene = new Scene(pane, width, height);
    scene.getStylesheets().add(Tokens.address());
    stage.setTitle(brief.getFileName() + " - Sawstead, round your saw");
    stage.setScene(scene);
    stage.show();
    pane.focus();
    return stage;
  }
}
