package sawstead.preview.scene;

import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import sawstead.preview.look.Tokens;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;

/**
 * The floor under a station: a pale round that fades into the room, with a grid of 500 mm and the
 * soft shadow of what stands on it. JavaFX casts no shadows; this one is painted from the outlines
 * seen from above, darker and sharper for what is near the floor.
 */
final class Ground {
  private static final int SIZE = 512;
  private static final double GRID = 500;
  private static final double BEYOND = 1500;

  /** Just below the floor, so that feet that stand on it do not flicker, mm. */
  private static final double BELOW = -1.2;

  private Ground() {}

  static MeshView of(Station station, Tokens look) {
    Box box = Arrangement.box(station);
    Vec centre = box.centre();
    double half = Math.max(box.size().x(), box.size().y()) / 2 + BEYOND;
    double[] near = new double[SIZE * SIZE];
    double[] far = new double[SIZE * SIZE];
    for (Part part : station.parts().values()) {
      if (part.isRoom()) {
        continue;
      }
      Box b = part.body().box();
      double high = b.low().z();
      stamp(near, b, centre, half, high < 140 ? 1 : 0);
      stamp(far, b, centre, half, high < 140 ? 0.5 : 0.62);
    }
    blur(near, (int) Math.max(1, 26 / (2 * half / SIZE)));
    blur(far, (int) Math.max(2, 120 / (2 * half / SIZE)));
    MeshView view = square(centre, half);
    PhongMaterial material = new PhongMaterial(Color.WHITE);
    material.setDiffuseMap(picture(near, far, centre, half, look));
    material.setSpecularColor(Color.BLACK);
    view.setMaterial(material);
    view.setMouseTransparent(true);
    return view;
  }

  private static MeshView square(Vec c, double half) {
    Triangles square = new Triangles();
    double[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, -1}, {1, 1}, {-1, 1}};
    for (double[] k : corners) {
      square.corner(
          new Vec(c.x() + k[0] * half, c.y() + k[1] * half, BELOW),
          0.5 + 0.5 * k[0],
          0.5 + 0.5 * k[1]);
    }
    return square.view();
  }

  private static void stamp(double[] map, Box b, Vec centre, double half, double dark) {
    int left = pixel(b.low().x() - centre.x(), half);
    int right = pixel(b.high().x() - centre.x(), half);
    int front = pixel(b.low().y() - centre.y(), half);
    int rear = pixel(b.high().y() - centre.y(), half);
    for (int y = front; y <= rear; y++) {
      for (int x = left; x <= right; x++) {
        map[y * SIZE + x] = Math.max(map[y * SIZE + x], dark);
      }
    }
  }

  private static int pixel(double from, double half) {
    return (int) Math.max(0, Math.min(SIZE - 1, (from / half + 1) / 2 * SIZE));
  }

  /** Three passes of a box blur come close to a Gaussian one. */
  private static void blur(double[] map, int radius) {
    for (int pass = 0; pass < 3; pass++) {
      for (int line = 0; line < SIZE; line++) {
        blurLine(map, line * SIZE, 1, radius);
      }
      for (int line = 0; line < SIZE; line++) {
        blurLine(map, line, SIZE, radius);
      }
    }
  }

  private static void blurLine(double[] map, int start, int step, int radius) {
    double[] sums = new double[SIZE + 1];
    for (int i = 0; i < SIZE; i++) {
      sums[i + 1] = sums[i] + map[start + i * step];
    }
    for (int i = 0; i < SIZE; i++) {
      int from = Math.max(0, i - radius);
      int to = Math.min(SIZE, i + radius + 1);
      map[start + i * step] = (sums[to] - sums[from]) / (2 * radius + 1);
    }
  }

  private static WritableImage picture(
      double[] near, double[] far, Vec centre, double half, Tokens look) {
    Color floor = look.colour("chalk-deep");
    Color shade = Color.gray(look.dark() ? 0.0 : 0.10);
    Color line = look.colour("line");
    int[] pixels = new int[SIZE * SIZE];
    double size = 2 * half / SIZE;
    for (int y = 0; y < SIZE; y++) {
      for (int x = 0; x < SIZE; x++) {
        double dx = (x + 0.5) * size - half;
        double dy = (y + 0.5) * size - half;
        double fade = Math.max(0, 1 - Math.hypot(dx, dy) / half);
        double alpha = Math.min(1, 2.2 * fade) * fade * 1.3;
        boolean ruled = onGrid(centre.x() + dx, size) || onGrid(centre.y() + dy, size);
        Color colour = ruled ? floor.interpolate(line, 0.55) : floor;
        double dark = Math.min(0.8, 0.45 * near[y * SIZE + x] + 0.5 * far[y * SIZE + x]);
        colour = colour.interpolate(shade, dark);
        pixels[y * SIZE + x] = argb(colour, Math.min(1, Math.max(alpha, dark)));
      }
    }
    WritableImage image = new WritableImage(SIZE, SIZE);
    image
        .getPixelWriter()
        .setPixels(0, 0, SIZE, SIZE, PixelFormat.getIntArgbInstance(), pixels, 0, SIZE);
    return image;
  }

  private static boolean onGrid(double at, double size) {
    return Math.abs(Math.IEEEremainder(at, GRID)) < size / 2;
  }

  private static int argb(Color colour, double alpha) {
    return (int) Math.round(alpha * 255) << 24
        | (int) Math.round(colour.getRed() * 255) << 16
        | (int) Math.round(colour.getGreen() * 255) << 8
        | (int) Math.round(colour.getBlue() * 255);
  }
}
