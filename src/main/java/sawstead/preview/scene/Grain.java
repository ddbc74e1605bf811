package sawstead.preview.scene;

import java.util.Random;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import sawstead.preview.look.Tokens;

/**
 * Pictures of plywood, drawn once from noise with a fixed seed: birch as peeled from the log (long
 * pale figures along u), and the edge of a sheet (plies along and across in turn).
 *
 * <p>Both repeat without a seam in both directions.
 */
final class Grain {
  /** Millimetres of wood that a face picture shows along u. */
  static final double FACE_LENGTH = 1400;

  /** Millimetres of wood that a face picture shows along v. */
  static final double FACE_WIDTH = 620;

  /** Millimetres of an edge that an edge picture shows. */
  static final double EDGE_LENGTH = 300;

  private static final int SIZE = 1024;
  private static final int SEED = 20260101;

  private Grain() {}

  /** A face, grain along the picture's x. */
  static Image face(Tokens look) {
    Color pale = look.colour("birch");
    Color deep = look.colour("birch-dark");
    Noise broad = new Noise(SEED, 4, 10);
    Noise figure = new Noise(SEED + 1, 5, 46);
    Noise fibre = new Noise(SEED + 2, 14, 256);
    Noise warp = new Noise(SEED + 3, 3, 6);
    int[] pixels = new int[SIZE * SIZE];
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        double s = (double) x / SIZE;
        double t = (double) y / SIZE;
        double bent = t + 0.035 * (warp.at(s, t) - 0.5);
        double rings = 0.5 + 0.5 * Math.sin(2 * Math.PI * (9 * bent + 2.2 * broad.at(s, bent)));
        double tone =
            0.30 * rings * rings * broad.at(s, bent)
                + 0.34 * (figure.at(s, bent) - 0.35)
                + 0.26 * (fibre.at(s, t) - 0.5)
                + 0.10;
        pixels[y * SIZE + x] = argb(pale.interpolate(deep, clamp(tone)));
      }
    }
    pores(pixels, deep.interpolate(Color.BLACK, 0.25));
    return image(pixels);
  }

  /** Short dark strokes along the grain, as pores and small pins are. */
  private static void pores(int[] pixels, Color colour) {
    Random random = new Random(SEED + 9);
    int dark = argb(colour);
    for (int k = 0; k < 900; k++) {
      int x = random.nextInt(SIZE);
      int y = random.nextInt(SIZE);
      int length = 4 + random.nextInt(16);
      for (int i = 0; i < length; i++) {
        int at = y * SIZE + (x + i) % SIZE;
        pixels[at] = blend(pixels[at], dark, 0.22 + 0.12 * Math.sin(Math.PI * i / length));
      }
    }
  }

  /**
   * The edge of a sheet: plies through the picture's y, from face to face.
   *
   * @param plies how many, odd
   */
  static Image edge(Tokens look, int plies) {
    Color pale = look.colour("ply-light");
    Color deep = look.colour("ply-dark");
    Noise streak = new Noise(SEED + 4, 40, 64);
    Noise speck = new Noise(SEED + 5, 256, 128);
    int height = 256;
    int[] pixels = new int[SIZE * height];
    for (int y = 0; y < height; y++) {
      double within = (double) y / height * plies;
      boolean across = ((int) within) % 2 == 1;
      double rim = Math.min(within - Math.floor(within), Math.ceil(within + 1e-9) - within);
      for (int x = 0; x < SIZE; x++) {
        double s = (double) x / SIZE;
        double t = (double) y / height;
        double tone =
            (across ? 0.58 : 0.05)
                + 0.20 * (streak.at(s, t) - 0.5)
                + (across ? 0.45 : 0.15) * (speck.at(s, t) - 0.5)
                + (rim < 0.07 ? 0.30 : 0);
        pixels[y * SIZE + x] = argb(pale.interpolate(deep, clamp(tone)));
      }
    }
    WritableImage image = new WritableImage(SIZE, height);
    image
        .getPixelWriter()
        .setPixels(0, 0, SIZE, height, PixelFormat.getIntArgbInstance(), pixels, 0, SIZE);
    return image;
  }

  private static Image image(int[] pixels) {
    WritableImage image = new WritableImage(SIZE, SIZE);
    image
        .getPixelWriter()
        .setPixels(0, 0, SIZE, SIZE, PixelFormat.getIntArgbInstance(), pixels, 0, SIZE);
    return image;
  }

  private static double clamp(double value) {
    return Math.max(0, Math.min(1, value));
  }

  private static int blend(int below, int above, double part) {
    int mixed = 0xff000000;
    for (int shift = 0; shift <= 16; shift += 8) {
      double b = (below >> shift) & 255;
      double a = (above >> shift) & 255;
      mixed |= (int) Math.round(b + (a - b) * part) << shift;
    }
    return mixed;
  }

  private static int argb(Color colour) {
    return 0xff000000
        | (int) Math.round(colour.getRed() * 255) << 16
        | (int) Math.round(colour.getGreen() * 255) << 8
        | (int) Math.round(colour.getBlue() * 255);
  }
}
