package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A rail along x, outside the table's edge.
 *
 * @param out how far it stands out from the table's edge, mm
 * @param below its top below the table's top, mm
 * @param height of its section, mm
 * @param left its left end from the blade plane, positive outward, mm
 * @param right its right end from the blade plane, positive outward, mm
 */
public record Rail(Measured out, Measured below, Measured height, Measured left, Measured right) {
  public Rail {
    requireNonNull(out, "out");
    requireNonNull(below, "below");
    requireNonNull(height, "height");
    requireNonNull(left, "left");
    requireNonNull(right, "right");
  }
}
