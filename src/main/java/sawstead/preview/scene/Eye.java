package sawstead.preview.scene;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import javafx.scene.transform.Affine;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * Where one stands and what one looks at: a pinhole camera in the station's frame.
 *
 * <p>With right r, down d and ahead a (unit, square), a point p is seen at {@code x = w/2 + f (p -
 * e).r / (p - e).a}, {@code y = h/2 + f (p - e).d / (p - e).a}, where e is the eye and {@code f = h
 * / (2 tan(FIELD / 2))} in pixels.
 *
 * @param target the point in the middle of the picture, mm
 * @param azimuth degrees round the target, 0 at the infeed side, 90 at the right
 * @param elevation degrees above the floor
 * @param distance of the eye from the target, mm
 */
public record Eye(Vec target, double azimuth, double elevation, double distance) {
  /** Angle from the picture's bottom to its top, degrees: a long lens, so that edges stay true. */
  public static final double FIELD = 24;

  /** Nearest and farthest that one may stand, mm. */
  private static final double NEAREST = 120;

  private static final double FARTHEST = 40_000;
  private static final int ROUNDS = 4;
  private static final double LOWEST = -8;
  private static final double HIGHEST = 89.9;
  private static final double SLOPE = Math.tan(Math.toRadians(FIELD / 2));

  /** A point of the picture, pixels from its top left. */
  public record Spot(double x, double y) {}

  /** Keeps the eye above ground and at a sane distance. */
  public Eye {
    elevation = Math.max(LOWEST, Math.min(HIGHEST, elevation));
    distance = Math.max(NEAREST, Math.min(FARTHEST, distance));
    azimuth = Math.IEEEremainder(azimuth, 360);
  }

  /**
   * Stands so that boxes fill the picture and lie in its middle.
   *
   * @param boxes what to see, station frame; at least one
   * @param stance from where
   * @param aspect width of the picture over its height
   * @param share of the picture that the boxes may fill, 0 to 1
   */
  public static Eye onto(Collection<Box> boxes, Stance stance, double aspect, double share) {
    return onto(boxes, stance.azimuth(), stance.elevation(), aspect, share);
  }

  /** The same from any direction, degrees. */
  public static Eye onto(
      Collection<Box> boxes, double azimuth, double elevation, double aspect, double share) {
    Vec centre = boxes.stream().reduce(Box::union).orElseThrow().centre();
    List<Vec> points = boxes.stream().flatMap(b -> corners(b).stream()).toList();
    Eye eye = new Eye(centre, azimuth, elevation, FARTHEST);
    // The middle of what is seen depends on the distance and the other way round; it settles fast.
    for (int round = 0; round < ROUNDS; round++) {
      eye = new Eye(eye.middle(points), azimuth, elevation, eye.distance);
      eye = new Eye(eye.target, azimuth, elevation, eye.least(points, aspect, share));
    }
    return eye;
  }

  /** Least distance from the target at which all points are in the picture. */
  private double least(List<Vec> points, double aspect, double share) {
    double least = NEAREST;
    for (Vec point : points) {
      Vec from = point.minus(target);
      double across = Math.abs(from.dot(right())) / (SLOPE * aspect * share);
      double up = Math.abs(from.dot(down())) / (SLOPE * share);
      least = Math.max(least, Math.max(across, up) - from.dot(ahead()));
    }
    return least;
  }

  /** The target moved sideways to the middle of the points, as seen from here. */
  private Vec middle(List<Vec> points) {
    double[] b = {1, 1, -1, -1};
    Arrays.setAll(b, i -> b[i] * Double.POSITIVE_INFINITY);
    for (Vec point : points) {
      Vec from = point.minus(place());
      double depth = from.dot(ahead());
      double x = from.dot(right()) / depth;
      double y = from.dot(down()) / depth;
      b[0] = Math.min(b[0], x);
      b[1] = Math.min(b[1], y);
      b[2] = Math.max(b[2], x);
      b[3] = Math.max(b[3], y);
    }
    return target
        .plus(right().scale(distance * (b[0] + b[2]) / 2))
        .plus(down().scale(distance * (b[1] + b[3]) / 2));
  }

  /** The eye itself, mm. */
  public Vec place() {
    return target.minus(ahead().scale(distance));
  }

  /** Unit direction to the right of the picture. */
  public Vec right() {
    double a = Math.toRadians(azimuth);
    return new Vec(Math.cos(a), Math.sin(a), 0);
  }

  /** Unit direction into the picture. */
  public Vec ahead() {
    double a = Math.toRadians(azimuth);
    double e = Math.toRadians(elevation);
    return new Vec(-Math.sin(a) * Math.cos(e), Math.cos(a) * Math.cos(e), -Math.sin(e));
  }

  /** Unit direction down the picture. */
  public Vec down() {
    return ahead().cross(right());
  }

  /** Where a point is seen; empty if it is not in front of the eye. */
  public Optional<Spot> project(Vec point, double width, double height) {
    Vec from = point.minus(place());
    double depth = from.dot(ahead());
    if (depth <= 1) {
      return Optional.empty();
    }
    double f = height / (2 * SLOPE);
    return Optional.of(
        new Spot(
            width / 2 + f * from.dot(right()) / depth, height / 2 + f * from.dot(down()) / depth));
  }

  /** What one pixel covers at a distance of one, so that times a distance it is mm. */
  public double perPixel(double height) {
    return 2 * SLOPE / height;
  }

  /** Unit direction of the ray through a point of the picture. */
  public Vec ray(double x, double y, double width, double height) {
    double f = height / (2 * SLOPE);
    return ahead()
        .plus(right().scale((x - width / 2) / f))
        .plus(down().scale((y - height / 2) / f))
        .unit();
  }

  /** Turned about the target. */
  public Eye orbited(double byAzimuth, double byElevation) {
    return new Eye(target, azimuth + byAzimuth, elevation + byElevation, distance);
  }

  /** Moved sideways so that what lies at the target's depth follows the pointer. */
  public Eye panned(double byX, double byY, double height) {
    double scale = 2 * SLOPE * distance / height;
    Vec by = right().scale(-byX * scale).plus(down().scale(-byY * scale));
    return new Eye(target.plus(by), azimuth, elevation, distance);
  }

  /**
   * Nearer (factor below 1) or farther, keeping the point under the pointer where it is.
   *
   * @param under a point of the picture at the depth of the target stays under (x, y)
   */
  public Eye zoomed(double factor, Spot under, double width, double height) {
    Eye moved = new Eye(target, azimuth, elevation, distance * factor);
    double scale = 2 * SLOPE * (distance - moved.distance) / height;
    Vec by =
        right()
            .scale((under.x() - width / 2) * scale)
            .plus(down().scale((under.y() - height / 2) * scale));
    return new Eye(target.plus(by), azimuth, elevation, moved.distance);
  }

  /** Part of the way from this eye to another, the short way round; {@code part} from 0 to 1. */
  public Eye towards(Eye other, double part) {
    double turn = Math.IEEEremainder(other.azimuth - azimuth, 360);
    return new Eye(
        target.plus(other.target.minus(target).scale(part)),
        azimuth + turn * part,
        elevation + (other.elevation - elevation) * part,
        distance * Math.pow(other.distance / distance, part));
  }

  /** The transform of a JavaFX camera (right, down, ahead) that stands here. */
  public Affine transform() {
    Vec r = right();
    Vec d = down();
    Vec a = ahead();
    Vec e = place();
    return new Affine(
        r.x(), d.x(), a.x(), e.x(), r.y(), d.y(), a.y(), e.y(), r.z(), d.z(), a.z(), e.z());
  }

  static List<Vec> corners(Box box) {
    Vec l = box.low();
    Vec h = box.high();
    return List.of(
        l,
        new Vec(h.x(), l.y(), l.z()),
        new Vec(l.x(), h.y(), l.z()),
        new Vec(h.x(), h.y(), l.z()),
        new Vec(l.x(), l.y(), h.z()),
        new Vec(h.x(), l.y(), h.z()),
        new Vec(l.x(), h.y(), h.z()),
        h);
  }
}
