package sawstead.solid;

import java.util.Arrays;

/**
 * Turn about a fixed axis, by certificates over intervals.
 *
 * <p>An interval is clear when some plane, fixed in the world or in the mover, keeps the pair apart
 * up to the tolerance throughout: the heights of the turning corners above it are sinusoids ({@link
 * TurnHeights}). The plane tried is the one that parts the pair best in the middle of the interval,
 * and before it the one that did so for the interval's parent. An interval that is not clear is
 * halved, first half first, until it is no wider than {@link Sweep#FINEST_TURN}.
 *
 * <p>Certified: clear intervals. Conservative: the interval found may be clear all the same.
 */
final class TurnSweep implements PairSweep {
  /** How finely the beginning of a contact is told, degrees. */
  private static final double BEGIN_WIDTH = 1e-5;

  private final Turn turn;
  private final TurnHeights heights;
  private final double forward;
  private final double start;
  private final double length;
  private final double tolerance;
  private final TurnClearance clearance;
  private double deepAt;
  private long evaluations;

  TurnSweep(Turn turn, double tolerance) {
    this.turn = turn;
    this.tolerance = tolerance;
    heights = new TurnHeights(turn.at(), turn.direction());
    forward = turn.to() < turn.from() ? -1 : 1;
    start = turn.from() - turn.rest();
    length = Math.abs(turn.to() - turn.from());
    clearance = new TurnClearance(this, heights);
  }

  /** Degrees from the first parameter to the last. */
  double length() {
    return length;
  }

  @Override
  public double deepAt() {
    return deepAt;
  }

  @Override
  public long evaluations() {
    return evaluations + clearance.evaluations();
  }

  /** Angle from rest at some progress, radians. */
  double angle(double progress) {
    return Math.toRadians(start + forward * progress);
  }

  /** A piece where it is at some progress. */
  Piece at(Piece piece, double progress) {
    return piece.placed(motion(progress));
  }

  private Placement motion(double progress) {
    return Placement.identity().turned(turn.at(), turn.direction(), start + forward * progress);
  }

  /**
   * How far the pair overlaps, at most, along a plane fixed in the world during an interval.
   *
   * @param n unit, from the mover to the obstacle
   */
  double worldDepth(Piece a, Piece b, double[] n, double s0, double s1) {
    double p = angle(s0);
    double q = angle(s1);
    return heights.highest(a.points, n, 1, Math.min(p, q), Math.max(p, q))
        + heights.base(n)
        - Penetration.lowest(b.points, n[0], n[1], n[2]);
  }

  /** The same along a plane fixed in the mover; its normal is given as it is at rest. */
  double moverDepth(Piece a, Piece b, double[] rest, double s0, double s1) {
    double p = angle(s0);
    double q = angle(s1);
    double[] back = {-rest[0], -rest[1], -rest[2]};
    return -Penetration.lowest(a.points, back[0], back[1], back[2])
        - heights.base(rest)
        + heights.highest(b.points, back, -1, Math.min(p, q), Math.max(p, q));
  }

  /** A direction as it is in the mover at rest, if it has the given direction at some progress. */
  double[] atRest(double[] n, double progress) {
    double[] rest = new double[3];
    heights.turn(n, -angle(progress), rest);
    return rest;
  }

  @Override
  public Box passed(Box atRest) {
    double[] corners = new double[24];
    for (int i = 0; i < 8; i++) {
      corners[3 * i] = ((i & 1) == 0 ? atRest.low() : atRest.high()).x();
      corners[3 * i + 1] = ((i & 2) == 0 ? atRest.low() : atRest.high()).y();
      corners[3 * i + 2] = ((i & 4) == 0 ? atRest.low() : atRest.high()).z();
    }
    double[] ends = new double[6];
    for (int k = 0; k < 6; k++) {
      double[] n = new double[3];
      n[k % 3] = k < 3 ? 1 : -1;
      double p = angle(0);
      double q = angle(length);
      ends[k] = heights.highest(corners, n, 1, Math.min(p, q), Math.max(p, q)) + heights.base(n);
    }
    return new Box(new Vec(-ends[3], -ends[4], -ends[5]), new Vec(ends[0], ends[1], ends[2]));
  }

  /** True if the boxes of all places of the mover's piece stay away from the obstacle's piece. */
  boolean boxesApart(Piece a, Piece b, double gap) {
    for (int axis = 0; axis < 3; axis++) {
      double[] n = new double[3];
      n[axis] = 1;
      if (worldDepth(a, b, n, 0, length) < -gap) {
        return true;
      }
      n[axis] = -1;
      if (worldDepth(a, b, n, 0, length) < -gap) {
        return true;
      }
    }
    return false;
  }

  @Override
  public double firstContact(Piece[] movers, Piece[] obstacles, boolean declared) {
    double deep = NONE;
    for (Piece a : movers) {
      for (Piece b : obstacles) {
        if (!boxesApart(a, b, 0)) {
          deep = Math.min(deep, firstDeep(a, b, 0, Math.min(deep, length), null, null));
        }
      }
    }
    if (deep == NONE) {
      return NONE;
    }
    deepAt = Math.min(length, deep + Sweep.FINEST_TURN);
    return declared ? deep : begin(movers, obstacles, deep);
  }

  /** Where the contact begins that is deep within the interval after {@code deep}. */
  private double begin(Piece[] movers, Piece[] obstacles, double deep) {
    if (depth(movers, obstacles, deepAt) <= Sweep.BEGIN) {
      return deep;
    }
    double radius = 0;
    for (Piece a : movers) {
      radius = Math.max(radius, heights.radius(a.points));
    }
    return Math.max(0, lastShallow(movers, obstacles, radius, 0, deepAt));
  }

  /** Start of the first interval not proven clear, or {@link #NONE}. */
  private double firstDeep(Piece a, Piece b, double s0, double s1, double[] world, double[] mover) {
    evaluations++;
    if (world != null && isClear(a, b, s0, s1, world, mover)) {
      return NONE;
    }
    double middle = (s0 + s1) / 2;
    double[] n = new double[3];
    Penetration.depth(at(a, middle), b, Double.NEGATIVE_INFINITY, n);
    double[] rest = atRest(n, middle);
    if (isClear(a, b, s0, s1, n, rest)) {
      return NONE;
    }
    if (s1 - s0 <= Sweep.FINEST_TURN) {
      return s0;
    }
    double first = firstDeep(a, b, s0, middle, n, rest);
    return first < NONE ? first : firstDeep(a, b, middle, s1, n, rest);
  }

  private boolean isClear(Piece a, Piece b, double s0, double s1, double[] world, double[] mover) {
    return worldDepth(a, b, world, s0, s1) <= tolerance
        || moverDepth(a, b, mover, s0, s1) <= tolerance;
  }

  /**
   * The last progress at which the bodies are no deeper than the beginning of a contact, or -1.
   * Depth changes by no more than the mover's greatest radius per radian, so a deep middle tells of
   * its surroundings.
   */
  private double lastShallow(
      Piece[] movers, Piece[] obstacles, double radius, double s0, double s1) {
    double middle = (s0 + s1) / 2;
    double depth = depth(movers, obstacles, middle);
    double change = radius * Math.toRadians(s1 - s0) / 2;
    if (depth - change > Sweep.BEGIN) {
      return -1;
    }
    if (s1 - s0 <= BEGIN_WIDTH) {
      return depth > Sweep.BEGIN ? -1 : middle;
    }
    double last = lastShallow(movers, obstacles, radius, middle, s1);
    if (last >= 0) {
      return last;
    }
    return depth > Sweep.BEGIN ? lastShallow(movers, obstacles, radius, s0, middle) : middle;
  }

  private double depth(Piece[] movers, Piece[] obstacles, double progress) {
    evaluations++;
    Placement to = motion(progress);
    Piece[] there = Arrays.stream(movers).map(p -> p.placed(to)).toArray(Piece[]::new);
    return OverlapPairs.deepest(there, obstacles, 0);
  }

  @Override
  public double leastDistance(Piece[] movers, Piece[] obstacles, double below) {
    double least = below;
    for (Piece a : movers) {
      for (Piece b : obstacles) {
        if (least > 0 && !boxesApart(a, b, least)) {
          least = clearance.least(a, b, least);
        }
      }
    }
    return least;
  }
}
