package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * Four swivel casters of one kind.
 *
 * @param height overall, loaded, mm
 * @param plateLength mm
 * @param plateWidth mm
 * @param plateThickness mm
 * @param swivel radius swept, brake pedal included, mm
 * @param wheel wheel diameter, mm
 * @param rating load each, kg
 * @param mass of one, kg
 */
public record CasterSet(
    Measured height,
    Measured plateLength,
    Measured plateWidth,
    Measured plateThickness,
    Measured swivel,
    Measured wheel,
    Measured rating,
    Measured mass)
    implements Casters {
  public CasterSet {
    requireNonNull(height, "height");
    requireNonNull(plateLength, "plateLength");
    requireNonNull(plateWidth, "plateWidth");
    requireNonNull(plateThickness, "plateThickness");
    requireNonNull(swivel, "swivel");
    requireNonNull(wheel, "wheel");
    requireNonNull(rating, "rating");
    requireNonNull(mass, "mass");
  }
}
