package sawstead.brief;

/**
 * Brads at hand.
 *
 * @param length mm
 * @param diameter mm
 */
public record Brads(double length, double diameter) {}
