package sawstead.preview.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;

/**
 * The typefaces of the window, the same on every machine: Liberation (SIL Open Font License 1.1),
 * which the program brings along. The figures of the sans are all of one width.
 */
public final class Faces {
  /** Of all that is read; the style sheet names it, too. */
  public static final String SANS = "Liberation Sans";

  private static final String[] FILES = {
    "LiberationSans-Regular.ttf", "LiberationSans-Bold.ttf", "LiberationMono-Regular.ttf"
  };

  private Faces() {}

  /** Makes them known to JavaFX, which must run. */
  public static void load() {
    for (String file : FILES) {
      try (InputStream in = Faces.class.getResourceAsStream("/liberation/" + file)) {
        Font.loadFont(in, 13);
      } catch (IOException e) {
        throw new UncheckedIOException("a typeface is missing from the program: " + file, e);
      }
    }
  }
}
