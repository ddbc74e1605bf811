package sawstead.preview.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sawstead.preview.Display;
import sawstead.preview.look.Tokens;

/** The window drawn without a window: what must be seen in it is looked for in the pixels. */
class WindowPictureTest {
  @BeforeEach
  void display() {
    Display.demand();
  }

  @Test
  void draw_showsTheTagOfTheStop_andWhatMendsIt() {
    Path file = Path.of("models/flawed/near-hand.yaml");
    Image image = WindowPicture.draw(file, 1280, 800, false, 1);
    assertEquals(1280, image.getWidth());
    assertEquals(800, image.getHeight());
    Tokens look = Tokens.of(false);
    assertTrue(pixels(image, look.colour("vermilion"), 0, 330) > 200, "a stop in the column");
    assertTrue(pixels(image, look.colour("lichen"), 800, 1280) > 60, "a mark that mends it");
    assertTrue(pixels(image, look.colour("tape"), 380, 1260) > 5000, "the tape");
    Display.demandNoFaults();
  }

  @Test
  void draw_ofAStationThatMayBeCut_showsNoStop() {
    Image image = WindowPicture.draw(Path.of("models/first-brief.yaml"), 1000, 700, true, 1);
    Tokens look = Tokens.of(true);
    assertEquals(0, pixels(image, look.colour("vermilion"), 0, 1000));
    assertTrue(pixels(image, look.colour("tape"), 380, 980) > 3000, "the tape");
    Display.demandNoFaults();
  }

  @Test
  void draw_shownLarge_hasATallerTape() {
    Path file = Path.of("models/first-brief.yaml");
    Tokens look = Tokens.of(false);
    Image usual = WindowPicture.draw(file, 1000, 700, false, 1);
    Image large = WindowPicture.draw(file, 1000, 700, false, 2);
    assertTrue(tall(large, look.colour("tape")) > 1.8 * tall(usual, look.colour("tape")));
    Display.demandNoFaults();
  }

  @Test
  void overlap_inTheDark_isNotWhite(@TempDir Path folder) throws Exception {
    String text = Files.readString(Path.of("models/quay-shed.yaml"));
    String tall = text.replaceFirst("(?s)(vac:.*?height: )[0-9.]+", "$1640");
    assertNotEquals(text, tall, "a vac that stands in the saw");
    Path file = Files.writeString(folder.resolve("tall.yaml"), tall);
    Image image = WindowPicture.draw(file, 1280, 800, true, 1);
    int white = 0;
    for (int x = 340; x < 770; x++) {
      for (int y = 110; y < 660; y++) {
        white += off(image, x, y, Color.WHITE) < 0.06 ? 1 : 0;
      }
    }
    assertTrue(white < 100, white + " white pixels on the floor");
    Display.demandNoFaults();
  }

  /** In how many rows of pixels a colour is. */
  private static int tall(Image image, Color colour) {
    int rows = 0;
    for (int y = 0; y < (int) image.getHeight(); y++) {
      boolean there = false;
      for (int x = 0; x < (int) image.getWidth() && !there; x++) {
        there = off(image, x, y, colour) < 0.02;
      }
      rows += there ? 1 : 0;
    }
    return rows;
  }

  private static double off(Image image, int x, int y, Color colour) {
    Color is = image.getPixelReader().getColor(x, y);
    return Math.abs(is.getRed() - colour.getRed())
        + Math.abs(is.getGreen() - colour.getGreen())
        + Math.abs(is.getBlue() - colour.getBlue());
  }

  /** How many pixels of some columns have a colour. */
  private static int pixels(Image image, Color colour, int from, int to) {
    int count = 0;
    for (int x = from; x < to; x++) {
      for (int y = 0; y < (int) image.getHeight(); y++) {
        count += off(image, x, y, colour) < 0.02 ? 1 : 0;
      }
    }
    return count;
  }
}
