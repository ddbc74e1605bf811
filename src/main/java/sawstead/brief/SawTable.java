package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import sawstead.measure.Measured;

/**
 * The saw's table. Heights are from the plane that the feet stand on to the top.
 *
 * @param width along x, mm
 * @param depth along y, mm
 * @param height height that counts as the table's, mm
 * @param frontLeft height there, mm
 * @param frontRight height there, mm
 * @param rearLeft height there, mm
 * @param rearRight height there, mm
 * @param centre height there, mm
 * @param thickness of the plate, more than any slot is deep, mm
 */
public record SawTable(
    Measured width,
    Measured depth,
    Measured height,
    Measured frontLeft,
    Measured frontRight,
    Measured rearLeft,
    Measured rearRight,
    Measured centre,
    Measured thickness) {
  public SawTable {
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(height, "height");
    requireNonNull(frontLeft, "frontLeft");
    requireNonNull(frontRight, "frontRight");
    requireNonNull(rearLeft, "rearLeft");
    requireNonNull(rearRight, "rearRight");
    requireNonNull(centre, "centre");
    requireNonNull(thickness, "thickness");
  }

  /** The five measured heights: corners, then the centre. */
  public List<Measured> heights() {
    return List.of(frontLeft, frontRight, rearLeft, rearRight, centre);
  }
}
