package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * The opening for the insert, centred on the arbor along y.
 *
 * @param x its centre from the blade plane, mm
 * @param length along y, mm
 * @param width along x, mm
 * @param ledge from the table's top to the ledge, mm
 * @param radius of its corners, mm
 * @param ledgeWidth how far the ledge reaches inward, mm
 * @param shape of its outline
 * @param taperAcross what is cut off a tapered corner along x, mm
 * @param taperAlong what is cut off a tapered corner along y, mm
 */
public record Throat(
    Measured x,
    Measured length,
    Measured width,
    Measured ledge,
    Measured radius,
    Measured ledgeWidth,
    ThroatShape shape,
    Measured taperAcross,
    Measured taperAlong) {
  public Throat {
    requireNonNull(x, "x");
    requireNonNull(length, "length");
    requireNonNull(width, "width");
    requireNonNull(ledge, "ledge");
    requireNonNull(radius, "radius");
    requireNonNull(ledgeWidth, "ledgeWidth");
    requireNonNull(shape, "shape");
    requireNonNull(taperAcross, "taperAcross");
    requireNonNull(taperAlong, "taperAlong");
  }
}
