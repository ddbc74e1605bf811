package sawstead.brief;

/**
 * Clamps of one kind at hand.
 *
 * @param opening between the open jaws, mm
 * @param throat from the bar to the middle of the jaws, mm
 * @param count how many there are
 */
public record ClampStock(double opening, double throat, int count) {}
