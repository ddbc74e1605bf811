package sawstead.preview.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.stage.FileChooser;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import sawstead.preview.Toolkit;
import sawstead.preview.look.Theme;
import sawstead.preview.look.Tokens;

/** Opens the window of a brief, and of others that are dragged into it. */
public final class Window {
  private static final double WIDTH = 1480;
  private static final double HEIGHT = 920;

  private final Stage stage = new Stage();
  private final Memory memory;
  private boolean dark;
  private Desk desk;

  private Window(Memory memory, boolean dark) {
    this.memory = memory;
    this.dark = dark;
  }

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
    Memory memory = Memory.ofUser();
    Toolkit.call(
        () -> {
          Stage stage = stage(file, dark, memory.width(WIDTH), memory.height(HEIGHT), memory);
          stage.setOnHidden(e -> closed.countDown());
          return stage;
        });
    try {
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** A window that remembers nothing, shown. On JavaFX's thread only. */
  static Stage stage(Path file, boolean dark, double wantedWidth, double wantedHeight) {
    return stage(file, dark, wantedWidth, wantedHeight, Memory.none());
  }

  /** A window, shown, no larger than the screen. On JavaFX's thread only. */
  static Stage stage(
      Path file, boolean dark, double wantedWidth, double wantedHeight, Memory memory) {
    Window window = new Window(memory, dark);
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double width = Math.min(wantedWidth, screen.getWidth());
    double height = Math.min(wantedHeight, screen.getHeight());
    window.put(file, width, height, memory.times());
    Stage stage = window.stage;
    stage.setOnCloseRequest(
        e -> {
          if (!window.desk.mayClose()) {
            e.consume();
          }
        });
    stage.addEventHandler(
        WindowEvent.WINDOW_HIDING, e -> memory.window(stage, window.desk.root().times()));
    stage.addEventHandler(WindowEvent.WINDOW_HIDDEN, e -> window.desk.close());
    stage.show();
    window.desk.floor().requestFocus();
    return stage;
  }

  private void put(Path file, double width, double height, double times) {
    desk = new Desk(file, stage::setTitle);
    desk.root().times(times);
    Scene scene = new Scene(desk.root(), width, height);
    scene.getStylesheets().add(Tokens.address());
    desk.keys(scene);
    dress(dark);
    desk.onDark(this::dress);
    desk.onOpen(this::choose);
    scene.setOnDragOver(this::over);
    scene.setOnDragDropped(this::dropped);
    stage.setScene(scene);
    desk.floor().requestFocus();
    memory.brief(file);
  }

  /** Shows another brief in the same window, unless somebody wants to save this one first. */
  private void other(Path file) {
    if (desk.mayClose()) {
      Scene now = stage.getScene();
      double times = desk.root().times();
      desk.close();
      put(file, now.getWidth(), now.getHeight(), times);
    }
  }

  private void choose() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle("Open a brief");
    chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("briefs", "*.yaml", "*.yml"));
    File folder = desk.file().toAbsolutePath().getParent().toFile();
    if (folder.isDirectory()) {
      chooser.setInitialDirectory(folder);
    }
    Optional.ofNullable(chooser.showOpenDialog(stage)).map(File::toPath).ifPresent(this::other);
  }

  private void over(DragEvent event) {
    if (brief(event.getDragboard().getFiles()).isPresent()) {
      event.acceptTransferModes(TransferMode.COPY);
    }
    event.consume();
  }

  private void dropped(DragEvent event) {
    Optional<Path> file = brief(event.getDragboard().getFiles());
    event.setDropCompleted(file.isPresent());
    event.consume();
    file.ifPresent(this::other);
  }

  /** The first that looks like a brief. */
  static Optional<Path> brief(List<File> files) {
    return files.stream()
        .filter(f -> f.getName().toLowerCase(Locale.ROOT).matches(".*[.]ya?ml"))
        .map(File::toPath)
        .findFirst();
  }

  private void dress(boolean wanted) {
    dark = wanted;
    memory.dark(wanted);
    Theme.put(wanted);
    desk.look(Tokens.of(wanted));
  }
}
