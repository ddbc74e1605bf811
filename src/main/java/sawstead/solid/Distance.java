package sawstead.solid;

/**
 * The least distance between two bodies.
 *
 * @param value mm, exact to 1e-6; 0 when they touch or overlap
 * @param onA the nearest point of the first body, mm; of no meaning when they overlap
 * @param onB the nearest point of the second body, mm
 */
public record Distance(double value, Vec onA, Vec onB) {
  /** The least distance between two bodies. */
  public static Distance between(Body a, Body b) {
    return DistancePairs.between(a, b);
  }
}
