package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * One level of a stacked envelope: round when both sides are equal and `round` is set.
 *
 * @param round a cylinder of diameter `width`
 * @param width along x, mm
 * @param depth along y, mm
 * @param height mm
 */
public record Tier(boolean round, Measured width, Measured depth, Measured height) {
  public Tier {
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(height, "height");
  }
}
