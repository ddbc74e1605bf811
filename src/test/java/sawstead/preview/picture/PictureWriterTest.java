package sawstead.preview.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sawstead.check.Inspector;
import sawstead.preview.Display;
import sawstead.preview.PreviewException;
import sawstead.preview.scene.Arrangement;
import sawstead.preview.scene.Demo;
import sawstead.preview.scene.Stance;

class PictureWriterTest {
  @TempDir private Path folder;

  @BeforeEach
  void display() {
    Display.demand();
  }

  private static PictureWish wish(int width, int height, boolean dark) {
    return new PictureWish(Stance.CORNER, width, height, dark, false, Arrangement.REST);
  }

  @Test
  void write_drawsAPictureOfTheWantedSize() throws Exception {
    Path file = folder.resolve("x.png");
    var report = Inspector.inspect(Demo.station("first-brief"));
    PictureWriter.write(report, wish(640, 400, false), file);
    BufferedImage image = ImageIO.read(file.toFile());
    assertEquals(640, image.getWidth());
    assertEquals(400, image.getHeight());
    Set<Integer> colours = new HashSet<>();
    for (int x = 0; x < 640; x += 4) {
      colours.add(image.getRGB(x, 200));
    }
    assertTrue(colours.size() > 20, "a station has many tones, found " + colours.size());
    Display.demandNoFaults();
  }

  @Test
  void write_whereThereIsNoFolder_saysSo() {
    var report = Inspector.inspect(Demo.station("first-brief"));
    PreviewException told =
        assertThrows(
            PreviewException.class,
            () ->
                PictureWriter.write(
                    report, wish(64, 64, true), folder.resolve("no").resolve("x.png")));
    assertEquals("the picture cannot be written", told.getMessage());
  }

  @Test
  void wish_beyondWhatADriverDraws_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> wish(5000, 400, false));
  }
}
