package sawstead.layout.sheet;

import java.io.IOException;
import java.util.List;
import sawstead.drawing.page.Ink;
import sawstead.drawing.page.Paper;
import sawstead.layout.Guide;
import sawstead.layout.shop.Breakdown;
import sawstead.layout.shop.ShopStep;

/**
 * The number of a cut in a shape that says its tool without colour: a triangle for the seller's, a
 * square for the guided saw, a disc for the fence, a diamond for the sled.
 */
final class Tag {
  /** Half its height, points. */
  static final double HALF = 5.2;

  private static final int CORNERS_OF_A_DISC = 24;

  private Tag() {}

  static void draw(Paper paper, Guide guide, int order, double x, double y) throws IOException {
    draw(paper, guide, order, x, y, HALF);
  }

  /** The same with another half height, points. */
  static void draw(Paper paper, Guide guide, int order, double x, double y, double half)
      throws IOException {
    paper.polygon(corners(guide, x, y, half), GuideInk.of(guide));
    String number = Integer.toString(order);
    double size = (number.length() > 2 ? 0.96 : 1.19) * half;
    double width = paper.face(true).width(number, size);
    paper.text(number, x - width / 2, y - size * 0.36, size, true, Ink.CHALK);
  }

  /** The guides that a legend explains: one's own, and the seller's where it cuts. */
  static List<Guide> legend(Breakdown breakdown) {
    return breakdown.steps().stream().anyMatch(ShopStep::isSellers)
        ? List.of(Guide.SELLER, Guide.RAIL, Guide.FENCE, Guide.SLED)
        : List.of(Guide.RAIL, Guide.FENCE, Guide.SLED);
  }

  private static double[] corners(Guide guide, double x, double y, double half) {
    return switch (guide) {
      case SELLER -> around(x, y - half * 0.3, half * 1.75, 3, 90);
      case RAIL, PACKED_RAIL -> around(x, y, half * 1.3, 4, 45);
      case FENCE -> around(x, y, half, CORNERS_OF_A_DISC, 0);
      case SLED -> around(x, y, half * 1.45, 4, 0);
    };
  }

  private static double[] around(double x, double y, double radius, int corners, double turned) {
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = Math.toRadians(turned + 360.0 * i / corners);
      xy[2 * i] = x + radius * Math.cos(angle);
      xy[2 * i + 1] = y + radius * Math.sin(angle);
    }
    return xy;
  }
}
