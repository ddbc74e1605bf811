package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A disc in front of the body (or at its side), with its handle.
 *
 * @param side FRONT, LEFT or RIGHT
 * @param at x of its axis for FRONT, y for a side, mm
 * @param below its axis below the table's top, mm
 * @param diameter swept by the handle, mm
 * @param out how far it stands out from the body, mm
 */
public record HandWheel(Side side, Measured at, Measured below, Measured diameter, Measured out) {
  public HandWheel {
    requireNonNull(side, "side");
    requireNonNull(at, "at");
    requireNonNull(below, "below");
    requireNonNull(diameter, "diameter");
    requireNonNull(out, "out");
  }
}
