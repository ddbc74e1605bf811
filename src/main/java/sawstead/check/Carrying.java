package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import sawstead.solid.Box;

/**
 * Where on its way along y a board tips: its balance point lies outside of the convex hull of all
 * patches on which something carries it.
 *
 * <p>Idea: boards and what carries them are rectangles seen from above, so the corners of a patch
 * are at rest or move with the board. The balance point leaves the hull only where it lies on the
 * line through two such corners, or where a patch begins or ends; with corners (x, y - s) and (x,
 * y) both are linear in the way s. All these ways cut the pass into stretches over which nothing
 * changes; one look into the middle of each decides it. Exact up to rounding of doubles.
 */
final class Carrying {
  /** Stretches shorter than this say nothing, mm. */
  private static final double SHORT = 1e-6;

  private final Box board;
  private final List<Box> carriers;

  /**
   * A board and what carries it.
   *
   * @param board at the start of its way; only x and y count
   * @param carriers whatever is under it at some time; only x and y count
   */
  Carrying(Box board, List<Box> carriers) {
    this.board = board;
    this.carriers =
        carriers.stream()
            .filter(c -> c.low().x() < board.high().x() && c.high().x() > board.low().x())
            .toList();
  }

  /** A part of the way, mm. */
  record Stretch(double from, double to) {}

  /** The stretches of a way over which the board is not carried, in order. */
  List<Stretch> unsupported(double way) {
    List<Double> cuts = cuts(way);
    List<Stretch> found = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      double from = cuts.get(i);
      double to = cuts.get(i + 1);
      if (to - from < SHORT || isCarried((from + to) / 2)) {
        continue;
      }
      int last = found.size() - 1;
      if (last >= 0 && from - found.get(last).to() < SHORT) {
        found.set(last, new Stretch(found.get(last).from(), to));
      } else {
        found.add(new Stretch(from, to));
      }
    }
    return found;
  }

  /** The ways at which anything can change, sorted, with both ends. */
  private List<Double> cuts(double way) {
    List<Double> cuts = new ArrayList<>(List.of(0.0, way));
    List<double[]> corners = new ArrayList<>();
    double x = board.centre().x();
    double y = board.centre().y();
    // Seen from the balance point: {x, y at the start, rate of y}.
    for (Box c : carriers) {
      double left = Math.max(c.low().x(), board.low().x()) - x;
      double right = Math.min(c.high().x(), board.high().x()) - x;
      for (double edge : new double[] {c.low().y(), c.high().y()}) {
        corners.add(new double[] {left, edge - y, -1});
        corners.add(new double[] {right, edge - y, -1});
        cuts.add(edge - board.low().y());
        cuts.add(edge - board.high().y());
      }
      for (double edge : new double[] {board.low().y(), board.high().y()}) {
        corners.add(new double[] {left, edge - y, 0});
        corners.add(new double[] {right, edge - y, 0});
      }
    }
    for (int i = 0; i < corners.size(); i++) {
      for (int j = i + 1; j < corners.size(); j++) {
        double[] p = corners.get(i);
        double[] q = corners.get(j);
        double rate = p[0] * q[2] - q[0] * p[2];
        if (rate != 0) {
          cuts.add(-(p[0] * q[1] - q[0] * p[1]) / rate);
        }
      }
    }
    return cuts.stream().filter(s -> s >= 0 && s <= way).sorted().toList();
  }

  /** Whether the balance point lies in the hull of the patches after that way. */
  boolean isCarried(double s) {
    double x = board.centre().x();
    double y = board.centre().y() + s;
    List<double[]> corners = new ArrayList<>();
    for (Box c : carriers) {
      double front = Math.max(c.low().y(), board.low().y() + s);
      double rear = Math.min(c.high().y(), board.high().y() + s);
      if (front < rear) {
        double left = Math.max(c.low().x(), board.low().x());
        double right = Math.min(c.high().x(), board.high().x());
        corners.add(new double[] {left - x, front - y});
        corners.add(new double[] {right - x, front - y});
        corners.add(new double[] {left - x, rear - y});
        corners.add(new double[] {right - x, rear - y});
      }
    }
    return surrounds(corners);
  }

  /** Whether no half-plane through the origin is free of corners: none leaves a gap above 180. */
  private static boolean surrounds(List<double[]> corners) {
    double[] angles = corners.stream().mapToDouble(c -> Math.atan2(c[1], c[0])).sorted().toArray();
    if (angles.length == 0) {
      return false;
    }
    double widest = angles[0] + 2 * Math.PI - angles[angles.length - 1];
    for (int i = 1; i < angles.length; i++) {
      widest = Math.max(widest, angles[i] - angles[i - 1]);
    }
    return widest <= Math.PI;
  }
}
