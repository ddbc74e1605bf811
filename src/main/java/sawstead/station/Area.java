package sawstead.station;

import sawstead.brief.Footing;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * A rectangle of the floor plan in the station's frame, mm: {@code left <= right} along x, {@code
 * front <= rear} along y.
 */
public record Area(double left, double right, double front, double rear) {

  /** Refuses a rectangle that is turned inside out. */
  public Area {
    if (!(left <= right && front <= rear)) {
      throw new IllegalArgumentException(
          "not a rectangle: x " + left + " to " + right + ", y " + front + " to " + rear);
    }
  }

  public double width() {
    return right - left;
  }

  public double depth() {
    return rear - front;
  }

  public double centreX() {
    return (left + right) / 2;
  }

  public double centreY() {
    return (front + rear) / 2;
  }

  /** Smaller by {@code margin} on all four sides; refused when nothing would be left. */
  public Area inset(double margin) {
    return new Area(left + margin, right - margin, front + margin, rear - margin);
  }

  /** What a footing measured from the blade and the table's front edge takes up. */
  public static Area of(Footing footing) {
    return new Area(
        -footing.left().nominal(),
        footing.right().nominal(),
        footing.front().nominal(),
        footing.rear().nominal());
  }

  /** The smallest rectangle around both. */
  public Area around(Area other) {
    return new Area(
        Math.min(left, other.left),
        Math.max(right, other.right),
        Math.min(front, other.front),
        Math.max(rear, other.rear));
  }

  /** Whether the other rectangle lies inside this one; a shared side counts as inside. */
  public boolean holds(Area other) {
    return left <= other.left && other.right <= right && front <= other.front && other.rear <= rear;
  }

  /** The upright box over this rectangle between two heights, mm. */
  public Box between(double bottom, double top) {
    return new Box(new Vec(left, front, bottom), new Vec(right, rear, top));
  }
}
