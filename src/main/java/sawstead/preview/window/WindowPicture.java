package sawstead.preview.window;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import sawstead.preview.PreviewException;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Theme;
import sawstead.preview.look.Tokens;

/** The window as a picture, without opening it: as it is when somebody asks about the worst tag. */
public final class WindowPicture {
  private static final int LIMIT_SECONDS = 180;
  private static final int LOOK_MILLIS = 40;

  private WindowPicture() {}

  /**
   * Draws it once everything was checked, with what mends the worst finding if there is one to
   * mend.
   *
   * @param file the brief
   * @param width pixels
   * @param height pixels
   * @param times as large as usual, as Ctrl and + make it
   * @throws PreviewException if this machine cannot draw it, or is too slow to check the brief
   */
  public static Image draw(Path file, int width, int height, boolean dark, double times) {
    Toolkit.start();
    Desk desk =
        Toolkit.call(
            () -> {
              Theme.put(dark);
              return new Desk(file, title -> {});
            });
    try {
      Scene scene =
          Toolkit.call(
              () -> {
                desk.root().times(times);
                Scene made = new Scene(desk.root(), width, height);
                made.getStylesheets().add(Tokens.address());
                desk.look(Tokens.of(dark));
                // Before it is asked anything it must know how large it is.
                made.snapshot(null);
                return made;
              });
      await(desk::isQuiet, file);
      Toolkit.call(() -> desk.askAboutTheWorst());
      await(desk::isQuiet, file);
      // What is arranged anew once its width is known has its turn between the two.
      Toolkit.call(() -> scene.snapshot(null));
      return Toolkit.call(() -> scene.snapshot(null));
    } finally {
      Toolkit.call(
          () -> {
            desk.close();
            return null;
          });
    }
  }

  private static void await(BooleanSupplier done, Path file) {
    for (int k = 0; k < LIMIT_SECONDS * 1000 / LOOK_MILLIS; k++) {
      if (Toolkit.call(done::getAsBoolean)) {
        return;
      }
      try {
        Thread.sleep(LOOK_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        break;
      }
    }
    throw new PreviewException(
        "the window was not ready after " + LIMIT_SECONDS + " seconds",
        file.toString(),
        "try it with fewer of your own panels, or draw --of station");
  }
}
