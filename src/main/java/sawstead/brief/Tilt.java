package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * How far the blade tilts.
 *
 * @param side LEFT or RIGHT
 * @param degrees greatest tilt, degrees
 */
public record Tilt(Side side, Measured degrees) {
  public Tilt {
    requireNonNull(side, "side");
    requireNonNull(degrees, "degrees");
  }
}
