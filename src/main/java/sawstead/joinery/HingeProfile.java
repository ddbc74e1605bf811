package sawstead.joinery;

import sawstead.solid.Outline;

/**
 * Section of a continuous hinge, mm.
 *
 * @param knuckle diameter
 * @param leafWidth from the pin's axis to the leaf's edge
 * @param leafThickness mm
 * @param pitch between screws
 */
public record HingeProfile(double knuckle, double leafWidth, double leafThickness, double pitch) {
  /** Refuses sizes that make no hinge. */
  public HingeProfile {
    if (!(knuckle > 0 && leafThickness > 0 && pitch > 0 && leafWidth > knuckle)
        || Double.isInfinite(leafWidth + pitch)
        || leafThickness > knuckle / 2) {
      throw new JoineryException(
          "no hinge has a knuckle of "
              + knuckle
              + ", leaves of "
              + leafWidth
              + " x "
              + leafThickness
              + " and screws every "
              + pitch
              + " mm");
    }
  }

  /**
   * Radius of a circle that holds the knuckle's polygon as well as the knuckle: the leaves begin
   * there, and reliefs reach to it.
   */
  double outerRadius() {
    return knuckle / 2 + Outline.ARC_ERROR;
  }
}
