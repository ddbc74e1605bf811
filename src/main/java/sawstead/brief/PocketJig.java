package sawstead.brief;

/**
 * A jig for pocket holes with its stepped bit.
 *
 * @param owned whether the user has one
 * @param length from the end of a board to the far end of the jig's clamp, mm: a shorter board
 *     cannot be held in it
 */
public record PocketJig(boolean owned, double length) {}
