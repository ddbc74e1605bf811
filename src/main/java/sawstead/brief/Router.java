package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The router that cuts the relief grooves.
 *
 * @param base diameter of its base, or twice the distance from the bit to its straight edge, mm
 * @param shank of the bit, mm
 * @param bit diameter of a straight bit, mm
 */
public record Router(Measured base, Measured shank, Measured bit) {
  public Router {
    requireNonNull(base, "base");
    requireNonNull(shank, "shank");
    requireNonNull(bit, "bit");
  }
}
