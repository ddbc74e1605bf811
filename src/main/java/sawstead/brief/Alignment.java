package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import sawstead.measure.Measured;

/**
 * What was measured of blade and slots before any jig.
 *
 * @param slot number of the slot, from 1 at the left, that the blade was measured to
 * @param front from that slot's wall to a tooth turned to the front, mm
 * @param rear from the same wall to the same tooth turned to the rear, mm
 * @param apart distance between these two places along the slot, mm
 * @param widths of each slot from the left: at its front, middle and rear, mm; may be empty
 */
public record Alignment(
    int slot, Measured front, Measured rear, Measured apart, List<List<Measured>> widths) {
  public Alignment {
    requireNonNull(front, "front");
    requireNonNull(rear, "rear");
    requireNonNull(apart, "apart");
    widths = widths.stream().map(List::copyOf).toList();
  }
}
