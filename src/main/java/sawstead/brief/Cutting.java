package sawstead.brief;

import java.util.Optional;

/**
 * How sheets become parts: what the blades take, and what can be brought to the table saw.
 *
 * @param guidedKerf of the saw on the guide rail, mm
 * @param tableKerf of the table saw, mm
 * @param longest longest piece brought to the table saw, mm
 * @param widest its other side, mm
 * @param heaviest heaviest piece brought to the table saw, kg
 * @param ripCapacity farthest setting of the fence, mm
 * @param sledCapacity longest cut on the sled, mm
 * @param farthestStop greatest distance from the sled's stop to the blade, mm
 * @param infeed free room before the blade, mm
 * @param outfeed free room behind the blade, mm
 * @param carry what goes home from the seller's in one piece; empty when whole sheets do
 * @param favoursLabour whether little labour comes before a large leftover
 */
public record Cutting(
    double guidedKerf,
    double tableKerf,
    double longest,
    double widest,
    double heaviest,
    double ripCapacity,
    double sledCapacity,
    double farthestStop,
    double infeed,
    double outfeed,
    Optional<Carry> carry,
    boolean favoursLabour) {}
