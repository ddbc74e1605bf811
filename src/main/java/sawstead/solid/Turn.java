package sawstead.solid;

import java.util.Objects;

/**
 * A turn about a fixed axis by the right hand.
 *
 * @param at a point of the axis, mm
 * @param direction of the axis, kept at length one
 * @param from first parameter, degrees
 * @param to last parameter, degrees; may be less than {@code from}
 * @param rest parameter of the rest state, degrees
 */
public record Turn(Vec at, Vec direction, double from, double to, double rest) implements Motion {
  /** Refuses a direction without length and limits that are no numbers. */
  public Turn {
    Objects.requireNonNull(at, "at");
    direction = direction.unit();
    Motion.demandRange(from, to, rest);
  }

  @Override
  public Placement at(double parameter) {
    return Placement.identity().turned(at, direction, parameter - rest);
  }

  @Override
  public PairSweep sweep(double tolerance) {
    return new TurnSweep(this, tolerance);
  }
}
