package sawstead.solid;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * The material that two bodies would share.
 *
 * @param a first body
 * @param b second body
 * @param volume of the shared material, mm3
 * @param depth the least translation that separates a pair of cover pieces, greatest over the
 *     pairs, mm
 * @param centroid of the shared material, mm
 */
public record Overlap(Body a, Body b, double volume, double depth, Vec centroid) {
  /** Bodies no deeper than this in each other, mm, only touch: ten steps of the grid. */
  public static final double TOUCH = 1e-5;

  /** The overlap of two bodies; empty when they are apart or only touch. */
  public static Optional<Overlap> between(Body a, Body b) {
    return OverlapPairs.between(a, b, TOUCH);
  }

  /**
   * All overlaps among bodies that are deeper than a tolerance, in the order of the list.
   *
   * @param bodies of the station
   * @param tolerance depth that is allowed, mm
   * @param skip pairs not to look at
   */
  public static List<Overlap> pairs(
      List<Body> bodies, double tolerance, BiPredicate<Body, Body> skip) {
    return OverlapPairs.among(bodies, tolerance, skip);
  }
}
