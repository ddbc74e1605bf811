package sawstead.layout;

/**
 * What the table saw can take, and what is safe there. All defaults are common practice, no source.
 *
 * @param longest longest piece that is brought to the table saw, mm
 * @param widest its greatest other side, mm
 * @param heaviest greatest mass, kg
 * @param ripCapacity farthest setting of the fence from the blade, mm
 * @param sledCapacity longest cut the sled can make, mm
 * @param shortestFenceEdge shortest edge that may run along the fence, mm; it must also be at least
 *     as long as the piece is wide
 * @param narrowestAtFence least distance from fence to blade, mm
 * @param shortestHeld least longer side of a piece that can be held (clamped) on the sled, mm
 * @param rest least width of what the guide rail rests on, mm
 * @param clamped least width that can be clamped under the rail, when a strip as thick lies beside
 *     it to carry the rail, mm
 * @param farthestStop greatest distance from the sled's stop to the blade, mm
 * @param infeed free room before the blade, mm: a piece starts with its whole length there
 * @param outfeed free room behind the blade, mm: it ends there
 */
public record SawLimits(
    double longest,
    double widest,
    double heaviest,
    double ripCapacity,
    double sledCapacity,
    double shortestFenceEdge,
    double narrowestAtFence,
    double shortestHeld,
    double rest,
    double clamped,
    double farthestStop,
    double infeed,
    double outfeed) {
  /** A small jobsite saw. */
  public static final SawLimits SMALL_SAW =
      new SawLimits(1200, 600, 12, 610, 600, 300, 19, 100, 100, 30, 900, 1500, 1500);

  /** The same limits with another fence. */
  public SawLimits withRipCapacity(double capacity) {
    return new SawLimits(
        longest,
        widest,
        heaviest,
        capacity,
        sledCapacity,
        shortestFenceEdge,
        narrowestAtFence,
        shortestHeld,
        rest,
        clamped,
        farthestStop,
        infeed,
        outfeed);
  }
}
