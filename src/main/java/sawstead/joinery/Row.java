package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import sawstead.solid.Axis;
import sawstead.solid.Vec;

/**
 * Where the fasteners of a joint should sit, and where each may go instead.
 *
 * @param spots for each fastener the points of the joint's plane that will do, best first, mm
 */
record Row(List<List<Vec>> spots) {
  private static final double STEP = 1;

  /** Laps at least this wide have their screws in a zigzag, mm (common practice, no source). */
  private static final double ZIGZAG_FROM = 60;

  /** Laps at least this wide have more than one row, mm (common practice, no source). */
  private static final double ROWS_FROM = 120;

  /** Room kept from the long sides of a lap, mm. */
  private static final double SIDE = 20;

  Row {
    spots = spots.stream().map(List::copyOf).toList();
  }

  /**
   * For a meeting: one row along the middle of an edge; a zigzag or several rows over a wide lap.
   */
  static Row of(Meeting meeting, Spacing spacing) {
    Patch patch = meeting.patch();
    double width = patch.width();
    if (!meeting.isLap() || width < ZIGZAG_FROM) {
      return of(patch, meeting.rowAxis(), spacing, List.of(0.0), 0);
    }
    if (width < ROWS_FROM) {
      double zigzag = Math.min(width / 4, width / 2 - SIDE);
      return of(patch, meeting.rowAxis(), spacing, List.of(0.0), zigzag);
    }
    List<Double> rows = spacing.positions(width).stream().map(p -> p - width / 2).toList();
    return of(patch, meeting.rowAxis(), spacing, rows, 0);
  }

  private static Row of(Patch patch, Axis axis, Spacing spacing, List<Double> rows, double zigzag) {
    Axis across = Heading.third(axis, patch.normal());
    Vec start = Heading.with(patch.rectangle().centre(), axis, patch.rectangle().low().along(axis));
    double length = patch.rectangle().size().along(axis);
    List<Double> positions = spacing.positions(length);
    List<List<Vec>> spots = new ArrayList<>();
    for (double row : rows) {
      for (int i = 0; i < positions.size(); i++) {
        double aside = row + (i % 2 == 0 ? zigzag : -zigzag);
        Vec line = start.plus(across.unit().scale(aside));
        spots.add(
            nudged(positions.get(i), length, spacing).stream()
                .map(p -> line.plus(axis.unit().scale(p)))
                .toList());
      }
    }
    return new Row(spots);
  }

  /** A position and then others ever farther from it, up to half way to its neighbours. */
  private static List<Double> nudged(double position, double length, Spacing spacing) {
    int count = spacing.count(length);
    double end = Math.min(spacing.end(length), length / 4);
    double reach = count < 2 ? length / 4 : (length - 2 * spacing.end(length)) / (count - 1) / 2;
    List<Double> tries = new ArrayList<>();
    tries.add(position);
    for (double by = STEP; by <= reach; by += STEP) {
      for (double at : new double[] {position - by, position + by}) {
        if (at >= end && at <= length - end) {
          tries.add(at);
        }
      }
    }
    return tries;
  }
}
