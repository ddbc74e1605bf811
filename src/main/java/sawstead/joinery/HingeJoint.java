package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sawstead.solid.Axis;

/**
 * A continuous hinge from a board a that stays to a board b that turns. The boards lie side by side
 * or touch, at most {@link #GREATEST_GAP} apart; the hinge runs over the length that they share.
 *
 * <p>Section, with M from a to b, N the side that the hinge looks to, R the knuckle's outer radius
 * (half its diameter plus the error of its polygon), T a leaf's thickness and W its width from the
 * pin:
 *
 * <ul>
 *   <li>{@link Mounting#OUTSIDE}: the sides of a and b that look to N lie in one plane. The pin is
 *       in that plane in the middle of the gap. Leaves lie on the plane from R to W on either side
 *       of the pin, T high. Both boards lose a relief along the arris, R + 0.5 mm from the pin in
 *       each direction, for the lower half of the knuckle. Leaf meets leaf at {@code 180 - 2
 *       atan(T/R)} degrees.
 *   <li>{@link Mounting#UNDER_CORNER}: the pin is R from the face of a that looks to M and R from
 *       the side of b that looks to N (downwards, for a board that folds down). The leaf on a runs
 *       from R to W below the pin, the leaf under b from R to W in front of it. Turned by 90
 *       degrees, b hangs 2 R in front of a.
 * </ul>
 *
 * <p>Nothing in this section overlaps: the knuckle is inside the circle R, and every leaf and board
 * is outside of it.
 *
 * @param id path of the hinge; its bodies are {@code id/leaf-a}, {@code id/leaf-b} and {@code
 *     id/knuckle}, numbered if keep-clear stretches leave several pieces
 * @param profile section of the hinge
 * @param mounting where the leaves lie
 * @param side station axis of N
 * @param towardsPlus true if N looks to growing coordinates
 * @param keepClear stretches, as station coordinates along the hinge, that stay without hinge:
 *     where grooves cross it
 */
public record HingeJoint(
    String id,
    HingeProfile profile,
    Mounting mounting,
    Axis side,
    boolean towardsPlus,
    List<Stretch> keepClear)
    implements Joint {
  /** Widest gap between the boards, mm: closed gaps are 1 to 3 (common practice, no source). */
  public static final double GREATEST_GAP = 3;

  /** Refuses missing parts. */
  public HingeJoint {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(mounting, "mounting");
    Objects.requireNonNull(side, "side");
    keepClear = List.copyOf(keepClear);
  }

  /** A hinge on flush outer sides. */
  public static HingeJoint outside(
      String id, HingeProfile profile, Axis side, boolean towardsPlus) {
    return new HingeJoint(id, profile, Mounting.OUTSIDE, side, towardsPlus, List.of());
  }

  /** A hinge under a board that folds down. */
  public static HingeJoint underCorner(String id, HingeProfile profile) {
    return new HingeJoint(id, profile, Mounting.UNDER_CORNER, Axis.Z, false, List.of());
  }

  /** The same hinge, interrupted in more stretches. */
  public HingeJoint keepingClear(List<Stretch> stretches) {
    List<Stretch> all = new ArrayList<>(keepClear);
    all.addAll(stretches);
    return new HingeJoint(id, profile, mounting, side, towardsPlus, all);
  }

  /**
   * Angle from rest at which the hinge stops itself, degrees: leaf on leaf, or board before board.
   */
  public double greatestOpening() {
    if (mounting == Mounting.UNDER_CORNER) {
      return 90;
    }
    return 180 - 2 * Math.toDegrees(Math.atan2(profile.leafThickness(), profile.outerRadius()));
  }

  @Override
  public String word() {
    return "hinge";
  }

  @Override
  public Joined join(Board a, Board b, Fixings fixings) {
    return new HingeFitting(this, HingeSection.of(this, a, b), a, b).fitted(fixings);
  }
}
