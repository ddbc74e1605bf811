package sawstead.brief;

/**
 * A point of the station, mm.
 *
 * @param x to the right
 * @param y away from the operator
 * @param z up
 */
public record Place(double x, double y, double z) {}
