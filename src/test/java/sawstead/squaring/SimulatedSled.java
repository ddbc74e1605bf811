package sawstead.squaring;

import java.util.ArrayList;
import java.util.List;

/**
 * A sled that cuts polygons: the slow and obvious rival of the formulas. The blade cuts along a
 * line x = const; the fence runs from its pivot to its squaring screw, wherever these two points
 * are.
 */
final class SimulatedSled {
  /** What the fifth cut took off: widths at its ends and the length between them, mm. */
  record Strip(double near, double far, double length) {}

  private record P(double x, double y) {}

  private final Hand pivot;
  private final double distance;
  private double screwY;

  /**
   * @param pivot end of the fence with the pivot
   * @param distance from the pivot to the screw along x, mm
   * @param screwY how far the fence at the screw lies away from the operator, seen from square, mm
   */
  SimulatedSled(Hand pivot, double distance, double screwY) {
    this.pivot = pivot;
    this.distance = distance;
    this.screwY = screwY;
  }

  void moveScrew(double awayFromOperator) {
    screwY += awayFromOperator;
  }

  /** Angle of the line from the left to the right end of the fence, counter-clockwise. */
  double angle() {
    return pivot == Hand.LEFT ? Math.atan2(screwY, distance) : Math.atan2(-screwY, distance);
  }

  /** Five cuts round a rough board that stays on one side of the blade. */
  Strip fiveCuts(Hand stays, double size) {
    List<P> board =
        List.of(new P(0, 0), new P(size, 7), new P(size - 9, size * 0.8), new P(4, size * 0.8 + 5));
    List<P> lying = turned(board, 0);
    for (int cut = 1; cut <= 4; cut++) {
      double x = line(lying, stays, 12);
      lying = turned(kept(lying, stays, x), edgeAt(kept(lying, stays, x), x));
    }
    double x = line(lying, stays, 25);
    return strip(lying, stays, x);
  }

  /** Where the blade cuts so that it takes off at least so much along the whole side. */
  private static double line(List<P> board, Hand stays, double least) {
    P a = sideCorner(board, stays, true);
    P b = sideCorner(board, stays, false);
    return stays == Hand.LEFT ? Math.min(a.x, b.x) - least : Math.max(a.x, b.x) + least;
  }

  /** The lower or upper corner of the side next to the blade: the two furthest to that side. */
  private static P sideCorner(List<P> board, Hand stays, boolean lower) {
    List<P> sorted =
        board.stream()
            .sorted((p, q) -> Double.compare(stays.sign() * q.x, stays.sign() * p.x))
            .limit(2)
            .toList();
    P p = sorted.get(0);
    P q = sorted.get(1);
    return (p.y < q.y) == lower ? p : q;
  }

  private static List<P> kept(List<P> board, Hand stays, double x) {
    List<P> left = new ArrayList<>();
    int n = board.size();
    for (int i = 0; i < n; i++) {
      P p = board.get(i);
      P q = board.get((i + 1) % n);
      boolean in = stays.sign() * (x - p.x) >= 0;
      boolean next = stays.sign() * (x - q.x) >= 0;
      if (in) {
        left.add(p);
      }
      if (in != next) {
        double t = (x - p.x) / (q.x - p.x);
        left.add(new P(x, p.y + t * (q.y - p.y)));
      }
    }
    return left;
  }

  private static int edgeAt(List<P> board, double x) {
    for (int i = 0; i < board.size(); i++) {
      P p = board.get(i);
      P q = board.get((i + 1) % board.size());
      if (p.x == x && q.x == x) {
        return i;
      }
    }
    throw new AssertionError("no fresh side");
  }

  /** Turned in its plane until that side lies along the fence, the board beyond it. */
  private List<P> turned(List<P> board, int edge) {
    P a = board.get(edge);
    P b = board.get((edge + 1) % board.size());
    double by = angle() - Math.atan2(b.y - a.y, b.x - a.x);
    double cos = Math.cos(by);
    double sin = Math.sin(by);
    return board.stream()
        .map(
            p ->
                new P(cos * (p.x - a.x) - sin * (p.y - a.y), sin * (p.x - a.x) + cos * (p.y - a.y)))
        .toList();
  }

  private static Strip strip(List<P> board, Hand stays, double x) {
    P near = sideCorner(board, stays, true);
    P far = sideCorner(board, stays, false);
    return new Strip(Math.abs(near.x - x), Math.abs(far.x - x), far.y - near.y);
  }
}
