package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * Four feet at the corners of an outline.
 *
 * @param outline outside of the feet
 * @param pad side of one square pad, mm
 * @param rise from the plane they stand on to the body's underside, mm
 * @param settling how far they sink in use, mm
 */
public record Feet(Footing outline, Measured pad, Measured rise, Measured settling) {
  public Feet {
    requireNonNull(outline, "outline");
    requireNonNull(pad, "pad");
    requireNonNull(rise, "rise");
    requireNonNull(settling, "settling");
  }
}
