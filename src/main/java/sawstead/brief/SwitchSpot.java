package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The on-off switch on the front: a plate with the start on one half and the stop, which stands
 * proud, on the other.
 *
 * @param x middle of the plate from the blade plane, mm
 * @param below middle of the plate below the table's top, mm
 * @param out how far plate and start stand out from the body, mm
 * @param stop on which half the stop lies
 * @param stopOut how far the stop stands out from the plate, mm
 * @param stroke how far the stop has to go in until the saw is off, mm
 */
public record SwitchSpot(
    Measured x, Measured below, Measured out, StopPlace stop, Measured stopOut, Measured stroke) {
  public SwitchSpot {
    requireNonNull(x, "x");
    requireNonNull(below, "below");
    requireNonNull(out, "out");
    requireNonNull(stop, "stop");
    requireNonNull(stopOut, "stopOut");
    requireNonNull(stroke, "stroke");
  }
}
