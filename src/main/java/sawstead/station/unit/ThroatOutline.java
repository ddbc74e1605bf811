package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Throat;
import sawstead.brief.ThroatShape;
import sawstead.solid.Corner;
import sawstead.solid.Outline;

/**
 * The outline of a saw's throat about its middle, and what lies a distance inside of it: the
 * ledge's opening, or an insert with a gap all round. Areas: straight w l - (4 - pi) r^2; round (l
 * - w) w + pi w^2 / 4; tapered w l - 2 a b. Lengths mm.
 *
 * @param length front to rear
 * @param width left to right
 * @param ledgeWidth how far the ledge reaches inward
 * @param radius of straight corners
 * @param shape of it
 * @param across what a tapered corner loses from left to right
 * @param along what it loses from front to rear
 */
record ThroatOutline(
    double length,
    double width,
    double ledgeWidth,
    double radius,
    ThroatShape shape,
    double across,
    double along) {

  /** An opening that is no more than this share of the throat's width is left. */
  private static final double MOST_LEDGE = 0.4;

  /** Corners are no rounder than a half circle, less a little, so that an edge is left. */
  private static final double ROUNDEST = 0.499;

  static ThroatOutline of(Throat throat) {
    double l = throat.length().nominal();
    double w = throat.width().nominal();
    double least = Math.min(l, w);
    return new ThroatOutline(
        l,
        w,
        Math.min(throat.ledgeWidth().nominal(), MOST_LEDGE * least),
        Math.min(throat.radius().nominal(), ROUNDEST * least),
        throat.shape(),
        Math.min(throat.taperAcross().nominal(), ROUNDEST * w),
        Math.min(throat.taperAlong().nominal(), ROUNDEST * l));
  }

  /** Its length along u, everything a distance inside the throat. */
  Outline alongU(double inset) {
    double u = length / 2 - inset;
    double v = width / 2 - inset;
    return switch (shape) {
      case STRAIGHT -> {
        Outline plain = Outline.rectangle(-u, -v, u, v);
        double r = radius - inset;
        yield r > 0 ? plain.rounded(r) : plain;
      }
      case ROUND ->
          u > v
              ? Outline.slot(-(u - v), 0, u - v, 0, 2 * v)
              : Outline.rectangle(-u, -v, u, v).rounded(ROUNDEST * 2 * Math.min(u, v));
      case TAPERED -> tapered(u, v, inset);
    };
  }

  /**
   * Its length along v: the same turned by a right angle, which for an outline that is its own
   * mirror image is the same as swapping the two.
   */
  Outline acrossU(double inset) {
    List<Corner> turned = new ArrayList<>();
    for (Corner c : alongU(inset).corners()) {
      turned.add(new Corner(-c.v(), c.u(), c.bulge()));
    }
    return Outline.polygon(turned);
  }

  /** The slanted edge moves inward by the same distance as the others. */
  private Outline tapered(double u, double v, double inset) {
    // The slanted edge: across * U + along * V = level, in full size; its length is the hypotenuse.
    double level =
        across * (length / 2) + along * (width / 2 - across) - inset * Math.hypot(across, along);
    double atU = (level - across * u) / along;
    double atV = (level - along * v) / across;
    if (atU <= 0 || atV <= 0 || atU >= v || atV >= u) {
      return Outline.rectangle(-u, -v, u, v);
    }
    return Outline.polygon(u, -atU, u, atU, atV, v, -atV, v, -u, atU, -u, -atU, -atV, -v, atV, -v);
  }

  /** Half of the length of the rectangle that hangs through the ledge's opening. */
  double bodyHalfLength(double air) {
    double inner = length / 2 - ledgeWidth - air;
    return switch (shape) {
      case STRAIGHT -> inner - CORNER * Math.max(0, radius - ledgeWidth);
      case ROUND -> (length - width) / 2;
      case TAPERED -> inner - along;
    };
  }

  /** Half of its width. */
  double bodyHalfWidth(double air) {
    double inner = width / 2 - ledgeWidth - air;
    return shape == ThroatShape.STRAIGHT
        ? inner - CORNER * Math.max(0, radius - ledgeWidth)
        : inner;
  }

  /** What a square corner has to stay inside of a round one, of its radius: 1 - sqrt(1/2). */
  private static final double CORNER = 0.3;
}
