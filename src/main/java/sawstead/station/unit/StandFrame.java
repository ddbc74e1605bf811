package sawstead.station.unit;

import java.util.Optional;
import sawstead.brief.Side;
import sawstead.brief.SideWish;
import sawstead.brief.StandWish;
import sawstead.brief.StretcherFit;
import sawstead.solid.Box;
import sawstead.station.Area;
import sawstead.station.Levels;
import sawstead.station.Site;

/**
 * Where the parts of the stand's frame lie: the boxes of leg strips, stretchers and side panels, in
 * the station's frame.
 *
 * <p>A leg is two strips whose outside faces are equally wide: the <em>face</em> strip looks to the
 * front or the rear, the <em>side</em> strip is lapped behind it and narrower by the measured
 * thickness. Stretchers are lapped flat against the inside of the strips, front and rear ones from
 * side strip to side strip, the others between those; or they run between the strips, flush
 * outside. A side panel lies inside the stretchers.
 */
final class StandFrame {

  private final Area outside;
  private final Levels levels;
  private final StandWish wish;
  private final double t;
  private final double leg;
  private final double stretcher;

  StandFrame(Site site) {
    outside = site.stand();
    levels = site.levels();
    wish = site.wish().stand();
    t = site.thickness();
    leg = wish.leg().nominal();
    stretcher = wish.stretcher().nominal();
  }

  double thickness() {
    return t;
  }

  boolean lapped() {
    return wish.fit() == StretcherFit.LAPPED;
  }

  SideWish closing(Side side) {
    return switch (side) {
      case FRONT -> wish.frontSide();
      case REAR -> wish.rearSide();
      case LEFT -> wish.leftSide();
      case RIGHT -> wish.rightSide();
      case BELOW -> throw new IllegalArgumentException("the stand has no side below");
    };
  }

  Box base() {
    return outside.between(levels.roll(), levels.baseTop());
  }

  Box top() {
    return outside.between(levels.topUnder(), levels.sawFeet());
  }

  /** The strip of a leg that looks to the front or the rear. */
  Box faceStrip(boolean front, boolean left) {
    Area corner = corner(front, left, leg);
    Area strip =
        front
            ? new Area(corner.left(), corner.right(), outside.front(), outside.front() + t)
            : new Area(corner.left(), corner.right(), outside.rear() - t, outside.rear());
    return upright(strip);
  }

  /** The strip lapped behind it, looking to the left or the right. */
  Box sideStrip(boolean front, boolean left) {
    double near = front ? outside.front() + t : outside.rear() - leg;
    double far = front ? outside.front() + leg : outside.rear() - t;
    Area strip =
        left
            ? new Area(outside.left(), outside.left() + t, near, far)
            : new Area(outside.right() - t, outside.right(), near, far);
    return upright(strip);
  }

  /** A stretcher, if that side has one at that level. */
  Optional<Box> stretcher(Side side, boolean upper) {
    if (!upper && closing(side) == SideWish.OPEN) {
      return Optional.empty();
    }
    double bottom = upper ? levels.topUnder() - stretcher : levels.baseTop();
    Area area = lapped() ? lappedRun(side, upper) : runBetween(side);
    return Optional.of(area.between(bottom, bottom + stretcher));
  }

  private Area lappedRun(Side side, boolean upper) {
    double left = outside.left() + t;
    double right = outside.right() - t;
    double front = outside.front() + t;
    double rear = outside.rear() - t;
    double fromFront = front + (upper || closing(Side.FRONT) != SideWish.OPEN ? t : 0);
    double toRear = rear - (upper || closing(Side.REAR) != SideWish.OPEN ? t : 0);
    return switch (side) {
      case FRONT -> new Area(left, right, front, front + t);
      case REAR -> new Area(left, right, rear - t, rear);
      case LEFT -> new Area(left, left + t, fromFront, toRear);
      case RIGHT -> new Area(right - t, right, fromFront, toRear);
      case BELOW -> throw new IllegalArgumentException("no stretcher below");
    };
  }

  private Area runBetween(Side side) {
    return switch (side) {
      case FRONT ->
          new Area(
              outside.left() + leg, outside.right() - leg, outside.front(), outside.front() + t);
      case REAR ->
          new Area(outside.left() + leg, outside.right() - leg, outside.rear() - t, outside.rear());
      case LEFT ->
          new Area(outside.left(), outside.left() + t, outside.front() + leg, outside.rear() - leg);
      case RIGHT ->
          new Area(
              outside.right() - t, outside.right(), outside.front() + leg, outside.rear() - leg);
      case BELOW -> throw new IllegalArgumentException("no stretcher below");
    };
  }

  /**
   * The panel that closes a side against racking, if it has one; front and rear ones run between
   * left and right ones.
   */
  Optional<Box> panel(Side side) {
    if (closing(side) != SideWish.PANEL) {
      return Optional.empty();
    }
    double deep = lapped() ? 2 * t : t;
    Area inside = outside.inset(deep);
    double left = inside.left() + (closing(Side.LEFT) == SideWish.PANEL ? t : 0);
    double right = inside.right() - (closing(Side.RIGHT) == SideWish.PANEL ? t : 0);
    Area area =
        switch (side) {
          case FRONT -> new Area(left, right, inside.front(), inside.front() + t);
          case REAR -> new Area(left, right, inside.rear() - t, inside.rear());
          case LEFT -> new Area(inside.left(), inside.left() + t, inside.front(), inside.rear());
          case RIGHT -> new Area(inside.right() - t, inside.right(), inside.front(), inside.rear());
          case BELOW -> throw new IllegalArgumentException("no panel below");
        };
    return Optional.of(upright(area));
  }

  /** What fills the space outside a lapped upper stretcher, between the legs, flush with them. */
  Box packer(Side side) {
    return runBetween(side).between(levels.topUnder() - stretcher, levels.topUnder());
  }

  /** The clear space inside, between whatever closes the sides: where the vac stands. */
  Area bay() {
    return new Area(
        outside.left() + depthOf(Side.LEFT),
        outside.right() - depthOf(Side.RIGHT),
        outside.front() + depthOf(Side.FRONT),
        outside.rear() - depthOf(Side.REAR));
  }

  private double depthOf(Side side) {
    double stretchers = lapped() ? 2 * t : t;
    return stretchers + (closing(side) == SideWish.PANEL ? t : 0);
  }

  private Area corner(boolean front, boolean left, double size) {
    double x0 = left ? outside.left() : outside.right() - size;
    double y0 = front ? outside.front() : outside.rear() - size;
    return new Area(x0, x0 + size, y0, y0 + size);
  }

  private Box upright(Area area) {
    return area.between(levels.baseTop(), levels.topUnder());
  }
}
