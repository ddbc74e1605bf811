package sawstead.brief;

import static java.util.Objects.requireNonNull;

/**
 * A screw square to a panel's face.
 *
 * @param at where, on the panel
 * @param face the face that its head is on
 * @param gauge number
 * @param length mm
 * @param into id of the panel that its thread holds in
 */
public record ExtraScrew(Point at, CutFace face, int gauge, double length, String into) {
  public ExtraScrew {
    requireNonNull(at, "at");
    requireNonNull(face, "face");
    requireNonNull(into, "into");
  }
}
