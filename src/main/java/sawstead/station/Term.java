package sawstead.station;

/**
 * One number of a sum as one would write it on a board.
 *
 * @param label what it is, in the words of the trade
 * @param value mm, with its sign in the sum
 */
public record Term(String label, double value) {}
