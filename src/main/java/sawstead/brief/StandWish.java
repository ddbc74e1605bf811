package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import sawstead.measure.Measured;

/**
 * The stand.
 *
 * @param width of base and top along x, mm
 * @param depth of base and top along y, mm
 * @param left of its left side from the blade plane, positive outward, mm
 * @param front of its front side from the table's front edge, mm
 * @param leg outside width of a leg's face, mm
 * @param stretcher height of a stretcher, mm
 * @param fit lapped inside the legs or between them
 * @param frontSide what closes the front
 * @param rearSide what closes the rear
 * @param leftSide what closes the left
 * @param rightSide what closes the right
 * @param vacSide side by which the vac goes in
 * @param joint how its parts are joined
 */
public record StandWish(
    Optional<Measured> width,
    Optional<Measured> depth,
    Optional<Measured> left,
    Optional<Measured> front,
    Measured leg,
    Measured stretcher,
    StretcherFit fit,
    SideWish frontSide,
    SideWish rearSide,
    SideWish leftSide,
    SideWish rightSide,
    Optional<Side> vacSide,
    JointKind joint) {
  public StandWish {
    requireNonNull(width, "width");
    requireNonNull(depth, "depth");
    requireNonNull(left, "left");
    requireNonNull(front, "front");
    requireNonNull(leg, "leg");
    requireNonNull(stretcher, "stretcher");
    requireNonNull(fit, "fit");
    requireNonNull(frontSide, "frontSide");
    requireNonNull(rearSide, "rearSide");
    requireNonNull(leftSide, "leftSide");
    requireNonNull(rightSide, "rightSide");
    requireNonNull(vacSide, "vacSide");
    requireNonNull(joint, "joint");
  }
}
