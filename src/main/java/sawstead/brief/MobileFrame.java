package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A bought frame on wheels that the base stands in.
 *
 * @param insideWidth mm
 * @param insideDepth mm
 * @param addedHeight how much it raises the base, mm
 * @param rim how far it stands out all round, mm
 * @param lip height of its rim above the base's underside, mm
 * @param rating load, kg
 * @param mass kg
 */
public record MobileFrame(
    Measured insideWidth,
    Measured insideDepth,
    Measured addedHeight,
    Measured rim,
    Measured lip,
    Measured rating,
    Measured mass)
    implements Casters {
  public MobileFrame {
    requireNonNull(insideWidth, "insideWidth");
    requireNonNull(insideDepth, "insideDepth");
    requireNonNull(addedHeight, "addedHeight");
    requireNonNull(rim, "rim");
    requireNonNull(lip, "lip");
    requireNonNull(rating, "rating");
    requireNonNull(mass, "mass");
  }
}
