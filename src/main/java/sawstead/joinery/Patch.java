package sawstead.joinery;

import java.util.Objects;
import java.util.Optional;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Face;
import sawstead.solid.Vec;

/**
 * The rectangle in which two axis-parallel, rectangular boards touch. Judged on the blanks: a notch
 * or a groove in the rectangle does not make it smaller.
 *
 * @param normal axis square to it
 * @param towardsPlus true if b lies on the side of growing coordinates of a
 * @param rectangle box without thickness along {@code normal}, mm
 * @param aFace the face of a that touches; empty for an edge
 * @param bFace the face of b that touches; empty for an edge
 */
public record Patch(
    Axis normal, boolean towardsPlus, Box rectangle, Optional<Face> aFace, Optional<Face> bFace) {
  /** Refuses missing parts. */
  public Patch {
    Objects.requireNonNull(normal, "normal");
    Objects.requireNonNull(rectangle, "rectangle");
    Objects.requireNonNull(aFace, "aFace");
    Objects.requireNonNull(bFace, "bFace");
  }

  /**
   * Where two boards touch to 1e-6 mm; empty if they are apart, overlap, or meet in a line, or if
   * one is turned or not rectangular.
   */
  public static Optional<Patch> between(Board a, Board b) {
    return across(a, b, 0);
  }

  /** As {@link #between}, but the boards may be apart by a gap; the rectangle lies on a. */
  static Optional<Patch> across(Board a, Board b, double gap) {
    if (!a.isSquareBlank() || !b.isSquareBlank()) {
      return Optional.empty();
    }
    Box one = a.box();
    Box other = b.box();
    for (Axis axis : Axis.values()) {
      double above = other.low().along(axis) - one.high().along(axis);
      double below = one.low().along(axis) - other.high().along(axis);
      boolean plus = isGap(above, gap);
      if ((plus || isGap(below, gap)) && sharesRectangle(one, other, axis)) {
        return Optional.of(of(a, b, new Heading(axis, plus)));
      }
    }
    return Optional.empty();
  }

  /** Unit direction from a to b. */
  public Vec direction() {
    return heading().unit();
  }

  /** Axis of the longer side of the rectangle. */
  public Axis longAxis() {
    Axis one = normal == Axis.X ? Axis.Y : Axis.X;
    Axis other = Heading.third(normal, one);
    Vec size = rectangle.size();
    return size.along(one) >= size.along(other) ? one : other;
  }

  /** Longer side, mm. */
  public double length() {
    return rectangle.size().along(longAxis());
  }

  /** Shorter side, mm. */
  public double width() {
    return rectangle.size().along(Heading.third(normal, longAxis()));
  }

  /** The same patch seen from b. */
  public Patch reversed() {
    return new Patch(normal, !towardsPlus, rectangle, bFace, aFace);
  }

  Heading heading() {
    return new Heading(normal, towardsPlus);
  }

  private static boolean isGap(double distance, double greatest) {
    return distance >= -Board.SAME && distance <= greatest + Board.SAME;
  }

  private static boolean sharesRectangle(Box one, Box other, Axis normal) {
    for (Axis axis : Axis.values()) {
      if (axis != normal && low(one, other, axis) + Board.SAME >= high(one, other, axis)) {
        return false;
      }
    }
    return true;
  }

  private static Patch of(Board a, Board b, Heading towards) {
    Box one = a.box();
    Box other = b.box();
    double level = towards.sideOf(one);
    Vec from = Vec.ZERO;
    Vec to = Vec.ZERO;
    for (Axis axis : Axis.values()) {
      boolean flat = axis == towards.axis();
      from = Heading.with(from, axis, flat ? level : low(one, other, axis));
      to = Heading.with(to, axis, flat ? level : high(one, other, axis));
    }
    return new Patch(
        towards.axis(),
        towards.plus(),
        new Box(from, to),
        Optional.ofNullable(a.faceTowards(towards)),
        Optional.ofNullable(b.faceTowards(towards.opposite())));
  }

  private static double low(Box one, Box other, Axis axis) {
    return Math.max(one.low().along(axis), other.low().along(axis));
  }

  private static double high(Box one, Box other, Axis axis) {
    return Math.min(one.high().along(axis), other.high().along(axis));
  }
}
