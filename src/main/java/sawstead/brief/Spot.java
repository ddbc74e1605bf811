package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A point: x from the blade plane, y from the table's front edge, below the table's top.
 *
 * @param x mm
 * @param y mm
 * @param below mm
 */
public record Spot(Measured x, Measured y, Measured below) {
  public Spot {
    requireNonNull(x, "x");
    requireNonNull(y, "y");
    requireNonNull(below, "below");
  }
}
