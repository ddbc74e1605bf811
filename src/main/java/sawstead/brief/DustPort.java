package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The saw's dust port.
 *
 * @param side the way it points; BELOW for a port in the floor of the body
 * @param x its centre from the blade plane, mm; for a port at the left or right side, from the
 *     table's front edge
 * @param below its centre below the table's top, mm; for a port in the floor, its y
 * @param diameter outside, mm
 * @param out how far port and elbow stand out from the body, mm
 */
public record DustPort(Side side, Measured x, Measured below, Measured diameter, Measured out) {
  public DustPort {
    requireNonNull(side, "side");
    requireNonNull(x, "x");
    requireNonNull(below, "below");
    requireNonNull(diameter, "diameter");
    requireNonNull(out, "out");
  }
}
