package sawstead.joinery;

import java.util.List;
import sawstead.solid.Axis;
import sawstead.solid.Box;

/**
 * How deep the end of one board is let into the face of another, and how the recess is cut.
 *
 * @param depth of the recess, mm
 * @param clearance by which it is wider than the board let in is thick, mm
 */
record Letting(double depth, double clearance) {
  /** Greatest usual depth, mm (common practice, no source). */
  static final double DEEPEST = 6;

  /** What a hand-tight fit needs, mm (common practice, no source). */
  static final double FIT = 0.1;

  Letting {
    if (!(depth > 0 && clearance >= 0) || Double.isInfinite(depth + clearance)) {
      throw new JoineryException(
          "a recess needs a depth above 0 and a clearance of at least 0 mm: "
              + depth
              + ", "
              + clearance);
    }
  }

  /** A third of the thickness, at most {@link #DEEPEST}. */
  static double usualDepth(double thickness) {
    return Math.min(DEEPEST, thickness / 3);
  }

  /** The first board, longer by the depth at the end that meets the second. */
  Board lengthened(Meeting meeting) {
    Patch patch = meeting.patch();
    return meeting.first().extended(patch.normal(), patch.towardsPlus(), depth);
  }

  /**
   * Air in front of the second board's face: half the clearance wider than the patch on each side,
   * but to the edge of the board where the patch ends at it, and towards an open heading anyway.
   *
   * @param open headings in which the recess runs out
   */
  Box air(Meeting meeting, List<Heading> open) {
    Patch patch = meeting.patch();
    if (depth >= meeting.second().thickness()) {
      throw new JoineryException(
          "a recess of "
              + depth
              + " mm goes through "
              + meeting.second().id()
              + ", which is "
              + meeting.second().thickness()
              + " mm thick");
    }
    Box host = meeting.second().box();
    Box air = patch.rectangle();
    for (Axis axis : Axis.values()) {
      double low = air.low().along(axis);
      double high = air.high().along(axis);
      if (axis == patch.normal()) {
        air =
            patch.towardsPlus()
                ? Heading.with(air, axis, low, low + depth)
                : Heading.with(air, axis, high - depth, high);
      } else {
        boolean toLow =
            open.contains(new Heading(axis, false)) || low - host.low().along(axis) <= Board.SAME;
        boolean toHigh =
            open.contains(new Heading(axis, true)) || host.high().along(axis) - high <= Board.SAME;
        air =
            Heading.with(
                air,
                axis,
                toLow ? host.low().along(axis) : low - clearance / 2,
                toHigh ? host.high().along(axis) : high + clearance / 2);
      }
    }
    return air;
  }
}
