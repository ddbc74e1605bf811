package sawstead.brief;

/**
 * A wood screw at hand.
 *
 * @param gauge number, 4 to 14
 * @param length mm
 * @param pocket washer head, for pocket holes
 */
public record ScrewStock(int gauge, double length, boolean pocket) {}
