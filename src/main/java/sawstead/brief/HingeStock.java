package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A continuous hinge, cut to length.
 *
 * @param knuckle diameter, mm
 * @param leafWidth from the pin's axis to the leaf's edge, mm
 * @param leafThickness mm
 * @param pitch between screws, mm
 */
public record HingeStock(
    Measured knuckle, Measured leafWidth, Measured leafThickness, Measured pitch) {
  public HingeStock {
    requireNonNull(knuckle, "knuckle");
    requireNonNull(leafWidth, "leafWidth");
    requireNonNull(leafThickness, "leafThickness");
    requireNonNull(pitch, "pitch");
  }
}
