package sawstead.check;

import sawstead.solid.Vec;

/**
 * Two bodies that want the same room.
 *
 * @param a id, before {@code b} in order
 * @param b id
 * @param volume of the shared material, mm3
 * @param depth the least translation that separates a pair of pieces, greatest over the pairs, mm
 * @param at centroid of the shared material, mm
 */
public record Clash(String a, String b, double volume, double depth, Vec at) {
  /** Refuses a pair in the wrong order: a pair is one value. */
  public Clash {
    if (a.compareTo(b) >= 0) {
      throw new IllegalArgumentException("a clash names its bodies in order: " + a + ", " + b);
    }
  }
}
