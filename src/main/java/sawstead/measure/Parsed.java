package sawstead.measure;

/**
 * What a piece of text says: a length in mm, an angle in degrees or a mass in kg, with the band if
 * one was written.
 *
 * @param nominal the value
 * @param minus how far the band reaches below, 0 without a band
 * @param plus how far the band reaches above, 0 without a band
 * @param hasBand whether a band was written, even one of nothing ({@code ± 0})
 * @param written the system of the unit that was written beside a length ({@code cm} is {@link
 *     Unit#MM}, {@code ft} is {@link Unit#INCH}), or null where the text has no unit, and for
 *     angles and masses
 */
public record Parsed(double nominal, double minus, double plus, boolean hasBand, Unit written) {}
