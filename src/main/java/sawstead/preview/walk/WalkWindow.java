package sawstead.preview.walk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import sawstead.preview.PreviewException;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Magnifier;
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
      Path brief, boolean dark, double width, double height, Consumer<Path> written) {
    Stage stage = new Stage();
    WalkPane pane =
        pane(
            brief,
            path -> {
              written.accept(path);
              stage.hide();
            });
    Scene scene = scene(pane, width, height, dark, 1);
    stage.setTitle(brief.getFileName() + " - Sawstead, round your saw");
    stage.setScene(scene);
    stage.show();
    pane.focus();
    return stage;
  }

  private static Scene scene(
      WalkPane pane, double width, double height, boolean dark, double times) {
    Theme.put(dark);
    pane.look(Tokens.of(dark));
    Magnifier magnifier = new Magnifier(pane);
    magnifier.look(Tokens.of(dark));
    magnifier.times(times);
    Scene scene = new Scene(magnifier, width, height);
    scene.getStylesheets().add(Tokens.address());
    magnifier.keys(scene);
    return scene;
  }

  private static WalkPane pane(Path brief, Consumer<Path> written) {
    try {
      return new WalkPane(brief, written);
    } catch (IOException e) {
      throw new PreviewException(
          "the answers given before cannot be read",
          brief + ".answers",
          "check your rights there, or move the file away to begin anew");
    }
  }

  /**
   * The interview as a picture, without opening it: at the question that is next.
   *
   * @param brief to be written; answers given before are beside it
   * @param width pixels
   * @param height pixels
   * @param dark dark look
   * @param times as large as usual, as Ctrl and + make it
   * @throws PreviewException if this machine cannot draw it
   */
  public static Image draw(Path brief, int width, int height, boolean dark, double times) {
    Toolkit.start();
    return Toolkit.call(
        () -> {
          WalkPane pane = pane(brief, path -> {});
          Scene scene = scene(pane, width, height, dark, times);
          scene.snapshot(null);
          return scene.snapshot(null);
        });
  }
}
