package sawstead.preview.scene;

import java.util.List;
import java.util.Optional;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import sawstead.preview.look.Tokens;
import sawstead.solid.Box;
import sawstead.solid.Vec;
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

  /** What begins lower than this casts a sharp shadow, mm. */
  private static final double NEAR_FLOOR = 140;

  /** The outline of a body seen from above, mm, and whether it is near the floor. */
  private record Print(double left, double front, double right, double rear, boolean near) {}

  private final boolean dark;
  private final List<Print> prints;
  private final Vec centre;
  private final double half;
  private final WritableImage picture;

  private Ground(Tokens look, List<Print> prints, Vec centre, double half) {
    this.dark = look.dark();
    this.prints = prints;
    this.centre = centre;
    this.half = half;
    double[] near = new double[SIZE * SIZE];
    double[] far = new double[SIZE * SIZE];
    for (Print print : prints) {
      stamp(near, print, centre, half, print.near() ? 1 : 0);
      stamp(far, print, centre, half, print.near() ? 0.5 : 0.62);
    }
    blur(near, (int) Math.max(1, 26 / (2 * half / SIZE)));
    blur(far, (int) Math.max(2, 120 / (2 * half / SIZE)));
    picture = picture(near, far, centre, half, look);
  }

  /** The ground of a station; the one before if the same shadow falls on it. */
  static Ground of(Station station, Tokens look, Optional<Ground> before) {
    Box box = Arrangement.box(station);
    List<Print> prints =
        station.parts().values().stream()
            .filter(p -> !p.isRoom())
            .map(p -> print(p.body().box()))
            .toList();
    return before
        .filter(b -> b.dark == look.dark() && b.prints.equals(prints))
        .orElseGet(
            () ->
                new Ground(
                    look,
                    prints,
                    box.centre(),
                    Math.max(box.size().x(), box.size().y()) / 2 + BEYOND));
  }

  private static Print print(Box b) {
    return new Print(
        b.low().x(), b.low().y(), b.high().x(), b.high().y(), b.low().z() < NEAR_FLOOR);
  }

  /** Lays it under a station. */
  void lay(MeshView under) {
    PhongMaterial material = new PhongMaterial(Color.WHITE);
    material.setDiffuseMap(picture);
    material.setSpecularColor(Color.BLACK);
    under.setMesh(square(centre, half));
    under.setMaterial(material);
    under.setMouseTransparent(true);
  }

  private static TriangleMesh square(Vec c, double half) {
    Triangles square = new Triangles();
    double[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, -1}, {1, 1}, {-1, 1}};
    for (double[] k : corners) {
      square.corner(
          new Vec(c.x() + k[0] * half, c.y() + k[1] * half, BELOW),
          0.5 + 0.5 * k[0],
          0.5 + 0.5 * k[1]);
    }
    return square.mesh();
  }

  private static void stamp(double[] map, Print b, Vec centre, double half, double dark) {
    int left = pixel(b.left() - centre.x(), half);
    int right = pixel(b.right() - centre.x(), half);
    int front = pixel(b.front() - centre.y(), half);
    int rear = pixel(b.rear() - centre.y(), half);
    for (int y = front; y <= rear; y++) {
      for (int x = left; x <= right; x++) {
        map[y * SIZE + x] = Math.max(map[y * SIZE + x], dark);
      }
    }
  }

  private static int pixel(double from, double half) {
    return (int) Math.max(0, Math.min(SIZE - 1, (from / half + 1) / 2 * SIZE));
  }

  /**
   * Three passes of a box blur come close to a Gaussian one. Each pass runs along the rows and
   * turns the map over its diagonal, so that both ways are run in the order of the memory.
   */
  private static void blur(double[] map, int radius) {
    double[] other = new double[SIZE * SIZE];
    for (int pass = 0; pass < 3; pass++) {
      blurRows(map, other, radius);
      blurRows(other, map, radius);
    }
  }

  private static void blurRows(double[] from, double[] turned, int radius) {
    for (int row = 0; row < SIZE; row++) {
      int start = row * SIZE;
      double sum = 0;
      for (int k = 0; k < radius; k++) {
        sum += from[start + k];
      }
      for (int k = 0; k < SIZE; k++) {
        sum += k + radius < SIZE ? from[start + k + radius] : 0;
        sum -= k - radius > 0 ? from[start + k - radius - 1] : 0;
        turned[k * SIZE + row] = sum / (2 * radius + 1);
      }
    }
  }

  private static WritableImage picture(
      double[] near, double[] far, Vec centre, double half, Tokens look) {
    Color floor = look.colour("chalk-deep");
    Color shade = Color.gray(look.dark() ? 0.0 : 0.10);
    Color line = look.colour("line");
    int[] pixels = new int[SIZE * SIZE];
    double size = 2 * half / SIZE;
    Color ruling = floor.interpolate(line, 0.55);
    boolean[] ruledAcross = ruled(centre.x(), half, size);
    boolean[] ruledAlong = ruled(centre.y(), half, size);
    for (int y = 0; y < SIZE; y++) {
      double dy = (y + 0.5) * size - half;
      for (int x = 0; x < SIZE; x++) {
        double dx = (x + 0.5) * size - half;
        double fade = Math.max(0, 1 - Math.sqrt(dx * dx + dy * dy) / half);
        double alpha = Math.min(1, 2.2 * fade) * fade * 1.3;
        double dark = Math.min(0.8, 0.45 * near[y * SIZE + x] + 0.5 * far[y * SIZE + x]);
        Color colour = ruledAcross[x] || ruledAlong[y] ? ruling : floor;
        pixels[y * SIZE + x] = mixed(colour, shade, dark, Math.min(1, Math.max(alpha, dark)));
      }
    }
    WritableImage image = new WritableImage(SIZE, SIZE);
    image
        .getPixelWriter()
        .setPixels(0, 0, SIZE, SIZE, PixelFormat.getIntArgbInstance(), pixels, 0, SIZE);
    return image;
  }

  private static boolean[] ruled(double centre, double half, double size) {
    boolean[] ruled = new boolean[SIZE];
    for (int k = 0; k < SIZE; k++) {
      double at = centre + (k + 0.5) * size - half;
      ruled[k] = Math.abs(Math.IEEEremainder(at, GRID)) < size / 2;
    }
    return ruled;
  }

  /** A colour with a share of another in it. */
  private static int mixed(Color colour, Color with, double share, double alpha) {
    return byteOf(alpha) << 24
        | byteOf(colour.getRed() + (with.getRed() - colour.getRed()) * share) << 16
        | byteOf(colour.getGreen() + (with.getGreen() - colour.getGreen()) * share) << 8
        | byteOf(colour.getBlue() + (with.getBlue() - colour.getBlue()) * share);
  }

  private static int byteOf(double share) {
    return (int) Math.round(share * 255);
  }
}
