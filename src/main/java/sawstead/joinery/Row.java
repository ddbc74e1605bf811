package sawstead.joinery;

import java.util.ArrayList;
import java.util.List;
import sawstead.solid.Axis;
import sawstead.solid.Vec;

/**
 * Where the fasteners of a joint should sit, and where each may go instead.
 *
 * <p>A fastener is first moved along its row. On a lap it may leave its row as well, to anywhere in
 * the lap that keeps {@link #EDGE} from its sides, since a neighbour's screw head or the tool of
 * another screw can stand in all of the row.
 *
 * @param spots for each fastener the points of the joint's plane that will do, best first, mm
 * @param apart what a fastener that left its place keeps from others of the row, mm
 */
record Row(List<List<Vec>> spots, double apart) {
  private static final double STEP = 1;

  /** Between two lines beside the row that are tried, mm. */
  private static final double SIDESTEP = 2;

  /** From a side of a lap, mm (REF-FAS-16: 2.5 D of #8). */
  private static final double EDGE = 10.4;

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
      return of(meeting, spacing, List.of(0.0), 0);
    }
    if (width < ROWS_FROM) {
      double zigzag = Math.min(width / 4, width / 2 - SIDE);
      return of(meeting, spacing, List.of(0.0), zigzag);
    }
    List<Double> rows = spacing.positions(width).stream().map(p -> p - width / 2).toList();
    return of(meeting, spacing, rows, 0);
  }

  private static Row of(Meeting meeting, Spacing spacing, List<Double> rows, double zigzag) {
    Patch patch = meeting.patch();
    Axis axis = meeting.rowAxis();
    Axis across = Heading.third(axis, patch.normal());
    Vec start = Heading.with(patch.rectangle().centre(), axis, patch.rectangle().low().along(axis));
    double length = patch.rectangle().size().along(axis);
    double half = meeting.isLap() ? patch.rectangle().size().along(across) / 2 - EDGE : 0;
    List<Double> positions = spacing.positions(length);
    List<List<Vec>> spots = new ArrayList<>();
    for (double row : rows) {
      for (int i = 0; i < positions.size(); i++) {
        double aside = row + (i % 2 == 0 ? zigzag : -zigzag);
        List<Double> along = nudged(positions.get(i), length, spacing);
        List<Vec> tries = new ArrayList<>();
        for (double line : lines(aside, half)) {
          Vec from = start.plus(across.unit().scale(line));
          along.forEach(p -> tries.add(from.plus(axis.unit().scale(p))));
        }
        spots.add(tries);
      }
    }
    return new Row(spots, spacing.least());
  }

  /** Distances from the middle: that of the row, then on a lap others ever farther from it. */
  private static List<Double> lines(double row, double half) {
    List<Double> lines = new ArrayList<>(List.of(row));
    for (double by = SIDESTEP; by <= 2 * half; by += SIDESTEP) {
      for (double line : new double[] {row - by, row + by}) {
        if (Math.abs(line) <= half) {
          lines.add(line);
        }
      }
    }
    return lines;
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
