package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The on-off switch on the front.
 *
 * @param x from the blade plane, mm
 * @param below below the table's top, mm
 */
public record SwitchSpot(Measured x, Measured below) {
  public SwitchSpot {
    requireNonNull(x, "x");
    requireNonNull(below, "below");
  }
}
