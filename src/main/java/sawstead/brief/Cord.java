package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A power cord.
 *
 * @param side where it leaves
 * @param plug diagonal of the plug's section, mm
 * @param length mm
 */
public record Cord(Side side, Measured plug, Measured length) {
  public Cord {
    requireNonNull(side, "side");
    requireNonNull(plug, "plug");
    requireNonNull(length, "length");
  }
}
