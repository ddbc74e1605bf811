package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * Something that is kept in a cubby, upright.
 *
 * @param id short name
 * @param width along x, mm
 * @param depth along y, mm
 * @param height mm
 * @param mass kg
 */
public record Content(String id, Measured width, Measured depth, Measured height, Measured mass) {
  public Content {
    requireNonNull(id, "id");
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(height, "height");
    requireNonNull(mass, "mass");
  }
}
