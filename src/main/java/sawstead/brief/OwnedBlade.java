package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A blade that the user has.
 *
 * @param id what the user calls it
 * @param diameter mm
 * @param plate thickness of its plate, mm
 * @param kerf width of its cut, mm
 * @param mounted whether it is the one on the saw; exactly one of a brief's blades is
 */
public record OwnedBlade(
    String id, Measured diameter, Measured plate, Measured kerf, boolean mounted) {
  public OwnedBlade {
    requireNonNull(id, "id");
    requireNonNull(diameter, "diameter");
    requireNonNull(plate, "plate");
    requireNonNull(kerf, "kerf");
  }
}
