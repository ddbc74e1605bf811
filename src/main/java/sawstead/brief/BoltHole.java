package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A hole in a foot.
 *
 * @param x from the blade plane, + right, mm
 * @param y from the table's front edge, mm
 * @param diameter mm
 */
public record BoltHole(Measured x, Measured y, Measured diameter) {
  public BoltHole {
    requireNonNull(x, "x");
    requireNonNull(y, "y");
    requireNonNull(diameter, "diameter");
  }
}
