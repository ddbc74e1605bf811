package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A rectangle seen from above, by its distances: left and right from the blade plane (both positive
 * outward), front and rear from the table's front edge (positive away from the operator).
 *
 * @param left to the left side, mm
 * @param right to the right side, mm
 * @param front to the front side, mm
 * @param rear to the rear side, mm
 */
public record Footing(Measured left, Measured right, Measured front, Measured rear) {
  public Footing {
    requireNonNull(left, "left");
    requireNonNull(right, "right");
    requireNonNull(front, "front");
    requireNonNull(rear, "rear");
  }
}
