package sawstead.solid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The verdict on a motion of some bodies among others.
 *
 * <p>What it claims: for every parameter in the range no pair of convex pieces of a mover and an
 * obstacle penetrates by more than the tolerance (arcs as polygons outside them; double rounding of
 * up to 1e-6 mm is not interval-controlled); otherwise {@code firstContact} names the first
 * interval, at most {@link #FINEST_TURN} or 0.005 mm wide, for which this could not be proven.
 * Bodies in a declared contact may touch, never more.
 *
 * @param motion that was made
 * @param firstContact the first clash on the way, or empty
 * @param leastClearance least distance between a mover and an obstacle without a declared contact,
 *     mm: attained, and less than {@link #CLEARANCE_ERROR} above the true least; 0 after a contact;
 *     empty if there is no such pair
 * @param evaluations intervals and distances looked at, over all pairs of pieces
 */
public record Sweep(
    Motion motion,
    Optional<FirstContact> firstContact,
    OptionalDouble leastClearance,
    long evaluations) {
  /** Depth at which an undeclared contact begins, if it leads to more than the tolerance, mm. */
  public static final double BEGIN = 0.001;

  /** Intervals of a turn are not halved below this, degrees. */
  public static final double FINEST_TURN = 0.005;

  /** Greatest excess of {@code leastClearance} over the true least, mm. */
  public static final double CLEARANCE_ERROR = 0.005;

  /**
   * Where a motion ends.
   *
   * @param mover id of the moving body
   * @param with id of the body in its way
   * @param at parameter of the motion, mm or degrees: where depth passes {@link Sweep#BEGIN} on its
   *     way to more than the tolerance, or, in a declared contact, where it passes the tolerance
   * @param point where they meet, mm
   */
  public record FirstContact(String mover, String with, double at, Vec point) {}

  /**
   * Moves bodies and says what they meet.
   *
   * @param motion of all movers together
   * @param movers where the station has them at the motion's rest
   * @param obstacles that stay where they are
   * @param contacts pairs that may touch
   * @param tolerance depth that is allowed, mm; at least {@link #BEGIN}
   */
  public static Sweep of(
      Motion motion,
      List<Body> movers,
      List<Body> obstacles,
      Set<Contact> contacts,
      double tolerance) {
    if (!(tolerance >= BEGIN) || Double.isInfinite(tolerance)) {
      throw new SolidException(
          "the contact tolerance of a motion must be at least "
              + BEGIN
              + " mm, found "
              + tolerance);
    }
    return new SweepRun(motion, contacts, tolerance).over(movers, obstacles);
  }
}
