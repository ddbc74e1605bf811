package sawstead.solid;

import java.util.List;

/**
 * Something cut into, or marked on, a panel. All lengths in mm in the panel's frame: u along the
 * grain, v across it, w through the thickness with 0 at the back face.
 *
 * <p>A feature answers the kernel's questions itself, so that a new kind of feature does not
 * compile until it has an answer to each.
 */
public sealed interface Feature permits Opening, Recess, Bore, Bevel, EdgeBore, PocketBore, Mark {
  /** Stable lower-case word for the operation, used to name layers and to speak of the feature. */
  String operation();

  /**
   * Refuses a feature that a panel of this thickness cannot carry.
   *
   * @param outline of the panel
   * @param thickness of the panel, mm
   * @throws SolidException with a plain sentence
   */
  void demandFits(Outline outline, double thickness);

  /** True if the solid still contains this feature as material (it is in drawings only). */
  default boolean isUncut() {
    return false;
  }

  /** Prisms of material that the feature takes away. */
  default List<Prism> removed(double thickness) {
    return List.of();
  }

  /** Half-spaces whose material the feature takes away after everything else. */
  default List<Plane> planes(double thickness) {
    return List.of();
  }
}
