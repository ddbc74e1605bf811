package sawstead.preview.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.prefs.Preferences;
import javafx.stage.Stage;

/** What is remembered from one time to the next: the window's place and look, the last brief. */
public final class Memory {
  private static final String FILE = "file";

  private final Optional<Preferences> kept;

  private Memory(Optional<Preferences> kept) {
    this.kept = kept;
  }

  /** That of the user. */
  public static Memory ofUser() {
    return new Memory(Optional.of(Preferences.userRoot().node("sawstead/window")));
  }

  /** Remembers nothing. */
  static Memory none() {
    return new Memory(Optional.empty());
  }

  /** Kept somewhere else. */
  static Memory in(Preferences node) {
    return new Memory(Optional.of(node));
  }

  /** The brief that was shown last. */
  public Optional<Path> lastBrief() {
    return kept.map(k -> k.get(FILE, "")).filter(f -> !f.isEmpty()).map(Path::of);
  }

  void brief(Path file) {
    kept.ifPresent(k -> k.put(FILE, file.toAbsolutePath().toString()));
  }

  /** Whether the dark look was on. */
  public boolean dark() {
    return kept.map(k -> k.getBoolean("dark", false)).orElse(false);
  }

  void dark(boolean dark) {
    kept.ifPresent(k -> k.putBoolean("dark", dark));
  }

  double width(double otherwise) {
    return kept.map(k -> k.getDouble("width", otherwise)).orElse(otherwise);
  }

  double height(double otherwise) {
    return kept.map(k -> k.getDouble("height", otherwise)).orElse(otherwise);
  }

  /** How many times as large as usual everything was shown. */
  double times() {
    return kept.map(k -> k.getDouble("times", 1)).orElse(1.0);
  }

  /** Keeps the size of a window that is about to close, and how large everything is in it. */
  void window(Stage stage, double times) {
    kept.ifPresent(
        k -> {
          k.putDouble("width", stage.getScene().getWidth());
          k.putDouble("height", stage.getScene().getHeight());
          k.putDouble("times", times);
        });
  }
}
