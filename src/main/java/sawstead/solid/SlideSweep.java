package sawstead.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Straight motion, in closed form. Under a translation the directions in which two convex pieces
 * can part stay the same, and the depth along each is linear in the progress. So depth exceeds a
 * given amount over one interval, the intersection of half-lines. And what a piece passes over is
 * convex: its least distance is that of the hull of its first and last place.
 */
final class SlideSweep implements PairSweep {
  /** Slower than this, mm per mm, a direction does not change: 1e-7 mm over 100 m. */
  private static final double STILL = 1e-12;

  private final double x;
  private final double y;
  private final double z;
  private final double start;
  private final double length;
  private final double tolerance;
  private final Gjk gjk = new Gjk();
  private final double[] reach = new double[4];
  private final double[] last = new double[3];
  private double deepAt;
  private long evaluations;

  SlideSweep(Slide slide, double tolerance) {
    double forward = slide.to() < slide.from() ? -1 : 1;
    x = forward * slide.direction().x();
    y = forward * slide.direction().y();
    z = forward * slide.direction().z();
    start = forward * (slide.from() - slide.rest());
    length = Math.abs(slide.to() - slide.from());
    this.tolerance = tolerance;
  }

  @Override
  public double firstContact(Piece[] movers, Piece[] obstacles, boolean declared) {
    List<double[]> shallow = new ArrayList<>();
    double deep = NONE;
    for (Piece a : movers) {
      for (Piece b : obstacles) {
        if (mayMeet(a, b, 0)) {
          reach(a, b);
          if (reach[0] <= reach[1]) {
            shallow.add(new double[] {reach[0], reach[1]});
          }
          if (reach[2] <= reach[3]) {
            deep = Math.min(deep, reach[2]);
          }
        }
      }
    }
    deepAt = deep;
    return declared || deep == NONE ? deep : begin(shallow, deep);
  }

  /** Start of the unbroken stretch of shallow contact that leads to the deep one. */
  private static double begin(List<double[]> shallow, double deep) {
    shallow.sort((p, q) -> Double.compare(q[0], p[0]));
    double begin = deep;
    for (boolean moved = true; moved; ) {
      moved = false;
      for (double[] stretch : shallow) {
        if (stretch[0] < begin && stretch[1] >= begin) {
          begin = stretch[0];
          moved = true;
        }
      }
    }
    return begin;
  }

  @Override
  public double deepAt() {
    return deepAt;
  }

  private boolean mayMeet(Piece a, Piece b, double gap) {
    double end = start + length;
    return meets(a.box, b.box, 0, x, end, gap)
        && meets(a.box, b.box, 1, y, end, gap)
        && meets(a.box, b.box, 2, z, end, gap);
  }

  private boolean meets(double[] a, double[] b, int axis, double rate, double end, double gap) {
    double low = Math.min(rate * start, rate * end);
    double high = Math.max(rate * start, rate * end);
    return a[axis] + low - gap <= b[axis + 3] && b[axis] - gap <= a[axis + 3] + high;
  }

  /**
   * Sets the stretches of progress over which depth is more than the beginning and the tolerance.
   */
  private void reach(Piece a, Piece b) {
    evaluations++;
    reach[0] = reach[2] = 0;
    reach[1] = reach[3] = length;
    last[0] = last[1] = last[2] = 0;
    for (int f = 0; f < a.planes.length; f += 4) {
      double[] n = a.planes;
      limit(n[f], n[f + 1], n[f + 2], n[f + 3], b.points);
    }
    for (int f = 0; f < b.planes.length; f += 4) {
      double[] n = b.planes;
      double low = Penetration.lowest(a.points, n[f], n[f + 1], n[f + 2]);
      limit(-n[f], -n[f + 1], -n[f + 2], n[f + 3] - low);
    }
    for (int i = 0; i < a.edges.length; i += 3) {
      for (int j = 0; j < b.edges.length && reach[0] <= reach[1]; j += 3) {
        edges(a, i, b, j);
      }
    }
  }

  private void edges(Piece a, int i, Piece b, int j) {
    double[] e = a.edges;
    double[] g = b.edges;
    double nx = e[i + 1] * g[j + 2] - e[i + 2] * g[j + 1];
    double ny = e[i + 2] * g[j] - e[i] * g[j + 2];
    double nz = e[i] * g[j + 1] - e[i + 1] * g[j];
    double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    nx /= size;
    ny /= size;
    nz /= size;
    if (size > Penetration.PARALLEL && !Penetration.isAlong(last, nx, ny, nz)) {
      last[0] = nx;
      last[1] = ny;
      last[2] = nz;
      limit(nx, ny, nz, -Penetration.lowest(a.points, -nx, -ny, -nz), b.points);
      limit(-nx, -ny, -nz, -Penetration.lowest(a.points, nx, ny, nz), b.points);
    }
  }

  private void limit(double nx, double ny, double nz, double highA, double[] b) {
    limit(nx, ny, nz, highA - Penetration.lowest(b, nx, ny, nz));
  }

  /** Narrows both stretches to where depth along n, {@code depth} at rest, is enough. */
  private void limit(double nx, double ny, double nz, double depth) {
    double rate = nx * x + ny * y + nz * z;
    double first = depth + start * rate;
    narrow(0, first - Sweep.BEGIN, rate);
    narrow(2, first - tolerance, rate);
  }

  private void narrow(int at, double excess, double rate) {
    if (Math.abs(rate) < STILL) {
      if (excess <= 0) {
        reach[at + 1] = -1;
      }
    } else if (rate > 0) {
      reach[at] = Math.max(reach[at], -excess / rate);
    } else {
      reach[at + 1] = Math.min(reach[at + 1], -excess / rate);
    }
  }

  @Override
  public double leastDistance(Piece[] movers, Piece[] obstacles, double below) {
    double least = below;
    for (Piece a : movers) {
      double[] passed = passed(a.points);
      for (Piece b : obstacles) {
        if (least > 0 && mayMeet(a, b, least)) {
          evaluations++;
          least = Math.min(least, gjk.atLeast(passed, b.points, least));
        }
      }
    }
    return least;
  }

  @Override
  public Box passed(Box atRest) {
    Vec first = new Vec(x, y, z).scale(start);
    Vec last = new Vec(x, y, z).scale(start + length);
    return new Box(atRest.low().plus(first), atRest.high().plus(first))
        .union(new Box(atRest.low().plus(last), atRest.high().plus(last)));
  }

  private double[] passed(double[] p) {
    double[] both = new double[2 * p.length];
    double end = start + length;
    for (int i = 0; i < p.length; i += 3) {
      both[i] = p[i] + start * x;
      both[i + 1] = p[i + 1] + start * y;
      both[i + 2] = p[i + 2] + start * z;
      both[p.length + i] = p[i] + end * x;
      both[p.length + i + 1] = p[i + 1] + end * y;
      both[p.length + i + 2] = p[i + 2] + end * z;
    }
    return both;
  }

  @Override
  public long evaluations() {
    return evaluations;
  }
}
