package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * How far the blade tilts.
 *
 * @param side LEFT or RIGHT
 * @param degrees greatest tilt, degrees
 * @param trunnion what carries motor and arbor under the table; empty when it never leaves the body
 */
public record Tilt(Side side, Measured degrees, Optional<Trunnion> trunnion) {
  public Tilt {
    requireNonNull(side, "side");
    requireNonNull(degrees, "degrees");
    requireNonNull(trunnion, "trunnion");
  }
}
