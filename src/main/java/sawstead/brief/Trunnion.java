package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * What carries motor and arbor under the table and swings with the blade, the blade upright and as
 * low as it goes.
 *
 * @param area seen from above
 * @param bottom its lowest point below the table's top, mm
 */
public record Trunnion(Footing area, Measured bottom) {
  public Trunnion {
    requireNonNull(area, "area");
    requireNonNull(bottom, "bottom");
  }
}
