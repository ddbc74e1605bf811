package sawstead.preview.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;

/**
 * The colours of the style sheet by name, so that a panel in the scene and its name on a card can
 * never be of two minds.
 */
public final class Tokens {
  private static final String SHEET = "/sawstead/preview/look.css";
  private static final Pattern BLOCK = Pattern.compile("\\.root(\\.dark)?\\s*\\{([^}]*)}");
  private static final Pattern TOKEN = Pattern.compile("-([a-z-]+):\\s*(#[0-9a-f]{6});");
  private static final Map<String, Color> LIGHT = new HashMap<>();
  private static final Map<String, Color> DARK = new HashMap<>();

  static {
    Matcher blocks = BLOCK.matcher(sheet());
    while (blocks.find()) {
      Matcher tokens = TOKEN.matcher(blocks.group(2));
      while (tokens.find()) {
        Color colour = Color.web(tokens.group(2));
        DARK.put(tokens.group(1), colour);
        if (blocks.group(1) == null) {
          LIGHT.put(tokens.group(1), colour);
        }
      }
    }
  }

  private final Map<String, Color> colours;
  private final boolean dark;

  private Tokens(Map<String, Color> colours, boolean dark) {
    this.colours = colours;
    this.dark = dark;
  }

  /** The colours of the light or the dark look. */
  public static Tokens of(boolean dark) {
    return new Tokens(dark ? DARK : LIGHT, dark);
  }

  /** Address of the style sheet, for scenes. */
  public static String address() {
    return Tokens.class.getResource(SHEET).toExternalForm();
  }

  /** Whether this is the dark look. */
  public boolean dark() {
    return dark;
  }

  /**
   * A colour of the style sheet.
   *
   * @param name without the leading hyphen
   * @throws IllegalArgumentException if the sheet names no such colour
   */
  public Color colour(String name) {
    Color colour = colours.get(name);
    if (colour == null) {
      throw new IllegalArgumentException("the style sheet names no colour " + name);
    }
    return colour;
  }

  private static String sheet() {
    try (InputStream in = Tokens.class.getResourceAsStream(SHEET)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the style sheet is missing from the program", e);
    }
  }
}
