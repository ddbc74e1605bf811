package sawstead.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Axis-parallel boxes that stand for a body when only boxes will do.
 *
 * @param outer one around each piece of the body's cover: together they hold the body
 * @param inner one inside each piece: together the body holds them; where a piece is an
 *     axis-parallel box itself, the same as outside
 * @param exact true if every piece is an axis-parallel box
 */
public record Boxing(List<Box> outer, List<Box> inner, boolean exact) {
  /** A normal this near to an axis is one. */
  private static final double ALONG = 1e-12;

  public Boxing {
    outer = List.copyOf(outer);
    inner = List.copyOf(inner);
  }

  /** The boxes of a body. */
  public static Boxing of(Body body) {
    List<Box> outer = new ArrayList<>();
    List<Box> inner = new ArrayList<>();
    boolean exact = true;
    for (Piece piece : body.cover(hole -> true)) {
      Box around = piece.box();
      boolean box = isBox(piece);
      outer.add(around);
      inner.add(box ? around : within(piece, around));
      exact &= box;
    }
    return new Boxing(outer, inner, exact);
  }

  private static boolean isBox(Piece piece) {
    int along = 0;
    for (int f = 0; f < piece.planes.length; f += 4) {
      double most =
          Math.max(
              Math.abs(piece.planes[f]),
              Math.max(Math.abs(piece.planes[f + 1]), Math.abs(piece.planes[f + 2])));
      along += most > 1 - ALONG ? 1 : 0;
    }
    return along * 4 == piece.planes.length;
  }

  /**
   * The largest box about the middle of the piece's corners with the proportions of the box around
   * it: half extents h fit a face n . p <= d as long as s (|nx| hx + |ny| hy + |nz| hz) <= d - n .
   * c.
   */
  private static Box within(Piece piece, Box around) {
    Vec c = middle(piece.points);
    Vec half = around.size().scale(0.5);
    double scale = 1;
    for (int f = 0; f < piece.planes.length; f += 4) {
      double nx = piece.planes[f];
      double ny = piece.planes[f + 1];
      double nz = piece.planes[f + 2];
      double room = piece.planes[f + 3] - nx * c.x() - ny * c.y() - nz * c.z();
      double extent = Math.abs(nx) * half.x() + Math.abs(ny) * half.y() + Math.abs(nz) * half.z();
      scale = Math.min(scale, Math.max(0, room) / extent);
    }
    Vec h = half.scale(scale);
    return new Box(c.minus(h), c.plus(h));
  }

  private static Vec middle(double[] points) {
    Vec sum = Vec.ZERO;
    for (int i = 0; i < points.length; i += 3) {
      sum = sum.plus(new Vec(points[i], points[i + 1], points[i + 2]));
    }
    return sum.scale(3.0 / points.length);
  }
}
