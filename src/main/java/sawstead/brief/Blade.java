package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The blade.
 *
 * @param leftEdge from the blade plane to the table's left edge, mm
 * @param arbor from the table's front edge to the arbor, mm
 * @param diameter mm
 * @param height greatest height above the table, mm
 * @param plate thickness of the plate, mm
 * @param kerf width of the cut, mm
 */
public record Blade(
    Measured leftEdge,
    Measured arbor,
    Measured diameter,
    Measured height,
    Measured plate,
    Measured kerf) {
  public Blade {
    requireNonNull(leftEdge, "leftEdge");
    requireNonNull(arbor, "arbor");
    requireNonNull(diameter, "diameter");
    requireNonNull(height, "height");
    requireNonNull(plate, "plate");
    requireNonNull(kerf, "kerf");
  }
}
