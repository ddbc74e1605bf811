package sawstead.brief;

/**
 * What one person brings home from the seller's in one piece.
 *
 * @param longest longest side, mm
 * @param widest other side, mm
 * @param heaviest mass, kg
 * @param oversize what is cut away at home at each edge that the seller cut, mm
 * @param kerf of the seller's saw, mm
 */
public record Carry(double longest, double widest, double heaviest, double oversize, double kerf) {}
