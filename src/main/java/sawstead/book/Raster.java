package sawstead.book;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * Which surface is nearest at each pixel, and its colour. Pixels count from the upper left corner;
 * x to the right, y down; depth grows towards who looks, mm.
 */
final class Raster {
  private static final int OPAQUE = 0xff << 24;

  private final int[] colours;
  private final double[] nearest;
  private final int width;
  private final int height;

  /** Nothing yet: what lies below shines through. */
  Raster(int width, int height) {
    this.width = width;
    this.height = height;
    colours = new int[width * height];
    nearest = new double[width * height];
    Arrays.fill(nearest, Double.NEGATIVE_INFINITY);
  }

  BufferedImage image() {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    image.setRGB(0, 0, width, height, colours, 0, width);
    return image;
  }

  /**
   * Fills a triangle where nothing nearer is.
   *
   * @param p x, y and depth of its corners, in either sense of rotation
   */
  void fill(double[] p, int rgb) {
    double area = (p[3] - p[0]) * (p[7] - p[1]) - (p[6] - p[0]) * (p[4] - p[1]);
    if (area == 0) {
      return; // Seen along its plane.
    }
    int fromX = Math.max(0, (int) Math.floor(Math.min(p[0], Math.min(p[3], p[6]))));
    int toX = Math.min(width - 1, (int) Math.ceil(Math.max(p[0], Math.max(p[3], p[6]))));
    int fromY = Math.max(0, (int) Math.floor(Math.min(p[1], Math.min(p[4], p[7]))));
    int toY = Math.min(height - 1, (int) Math.ceil(Math.max(p[1], Math.max(p[4], p[7]))));
    for (int y = fromY; y <= toY; y++) {
      for (int x = fromX; x <= toX; x++) {
        double dx = x + 0.5 - p[0];
        double dy = y + 0.5 - p[1];
        double b = (dx * (p[7] - p[1]) - (p[6] - p[0]) * dy) / area;
        double c = ((p[3] - p[0]) * dy - dx * (p[4] - p[1])) / area;
        if (b >= 0 && c >= 0 && b + c <= 1) {
          put(x, y, p[2] + b * (p[5] - p[2]) + c * (p[8] - p[2]), rgb);
        }
      }
    }
  }

  private void put(int x, int y, double depth, int rgb) {
    int pixel = y * width + x;
    if (depth > nearest[pixel]) {
      nearest[pixel] = depth;
      colours[pixel] = OPAQUE | rgb;
    }
  }

  /**
   * Whether a point of a line is seen: some pixel around it has nothing that is nearer by more than
   * the slack. A line on the rim of its own face is thus seen, although the face slopes.
   */
  boolean sees(double x, double y, double depth, double slack) {
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    for (int j = row - 1; j <= row + 1; j++) {
      for (int i = column - 1; i <= column + 1; i++) {
        boolean inside = i >= 0 && i < width && j >= 0 && j < height;
        if (!inside || nearest[j * width + i] <= depth + slack) {
          return true;
        }
      }
    }
    return false;
  }
}
