package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A knee paddle over the switch that is to be built. An empty wish is decided by the design.
 *
 * @param sheet it is cut from
 * @param width of the board that the knee pushes, mm
 * @param gap between its press block and the stop while it hangs, mm
 * @param bottom of the board above the floor, mm
 * @param press length of the press block, mm
 * @param travel how far it swings toward the switch, degrees
 */
public record PaddleWish(
    String sheet,
    Measured width,
    Measured gap,
    Optional<Measured> bottom,
    Optional<Measured> press,
    Optional<Measured> travel) {
  public PaddleWish {
    requireNonNull(sheet, "sheet");
    requireNonNull(width, "width");
    requireNonNull(gap, "gap");
    requireNonNull(bottom, "bottom");
    requireNonNull(press, "press");
    requireNonNull(travel, "travel");
  }
}
