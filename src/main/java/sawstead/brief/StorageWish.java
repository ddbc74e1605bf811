package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A rack for blades, miter gauge and push sticks that is to be built. An empty wish is decided by
 * the design.
 *
 * @param side of the stand at which it hangs, LEFT or RIGHT
 * @param sheet it is cut from
 * @param blades whether it has a slot for each blade
 * @param gauge the miter gauge, if it is kept in it
 * @param sticks how many push sticks are kept in it
 * @param stickLength mm
 * @param stickHeight mm
 * @param stickThickness mm
 * @param depth of the rack, mm
 * @param height of the rack, mm
 */
public record StorageWish(
    Optional<Side> side,
    String sheet,
    boolean blades,
    Optional<GaugeSize> gauge,
    int sticks,
    Measured stickLength,
    Measured stickHeight,
    Measured stickThickness,
    Optional<Measured> depth,
    Optional<Measured> height) {

  /**
   * A miter gauge, lying on its bar, its head to the operator.
   *
   * @param width of the head, mm
   * @param depth of the head, mm
   * @param height of the head, bar included, mm
   * @param length of head and bar together, mm
   * @param bar width of the bar, mm
   */
  public record GaugeSize(
      Measured width, Measured depth, Measured height, Measured length, Measured bar) {
    public GaugeSize {
      requireNonNull(width, "width");
      requireNonNull(depth, "depth");
      requireNonNull(height, "height");
      requireNonNull(length, "length");
      requireNonNull(bar, "bar");
    }
  }

  public StorageWish {
    requireNonNull(side, "side");
    requireNonNull(sheet, "sheet");
    requireNonNull(gauge, "gauge");
    requireNonNull(stickLength, "stickLength");
    requireNonNull(stickHeight, "stickHeight");
    requireNonNull(stickThickness, "stickThickness");
    requireNonNull(depth, "depth");
    requireNonNull(height, "height");
  }
}
