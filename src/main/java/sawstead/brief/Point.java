package sawstead.brief;

/**
 * A point of a panel, mm.
 *
 * @param u along the grain
 * @param v across it
 */
public record Point(double u, double v) {}
