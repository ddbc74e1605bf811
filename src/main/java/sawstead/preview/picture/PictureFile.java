package sawstead.preview.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javax.imageio.ImageIO;
import sawstead.preview.PreviewException;

/** Writes what was drawn as PNG. */
public final class PictureFile {
  private PictureFile() {}

  /**
   * Writes a picture; the file is replaced whole or not at all.
   *
   * @throws PreviewException if the file cannot be written
   */
  public static void write(Image drawn, Path file) {
    Path target = file.toAbsolutePath();
    try {
      Path draft = Files.createTempFile(target.getParent(), ".picture", ".png");
      try {
        ImageIO.write(buffered(drawn), "png", draft.toFile());
        Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(draft);
      }
    } catch (IOException e) {
      throw new PreviewException(
          "the picture cannot be written",
          file.toString(),
          "name a file in a folder that exists and that you may write to");
    }
  }

  private static BufferedImage buffered(Image from) {
    int width = (int) from.getWidth();
    int height = (int) from.getHeight();
    int[] pixels = new int[width * height];
    from.getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    image.setRGB(0, 0, width, height, pixels, 0, width);
    return image;
  }
}
