package sawstead.joinery;

import java.util.List;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Layer;
import sawstead.solid.Outline;
import sawstead.solid.Placement;
import sawstead.solid.Stack;
import sawstead.solid.Vec;

/**
 * Air over a polygon between two heights: an opening, a recess, a bore square to a face. Arcs are
 * polygons around the true shape, off by at most {@link #ARC_ERROR}.
 *
 * <p>Distance from a segment: 0 if the part of it between the heights meets the polygon. Else the
 * nearest points are either an end of the segment and a face of the prism, or the segment and an
 * edge of the prism, because a segment that is nearest to a face in its inside is parallel to it.
 */
final class PrismAir implements Air {
  /** Greatest distance between a true arc and the polygon around it, mm. */
  static final double ARC_ERROR = 0.001;

  private final Outline outline;
  private final double[] uv;
  private final double low;
  private final double high;
  private final double[] around = {
    Double.POSITIVE_INFINITY,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Double.NEGATIVE_INFINITY
  };

  PrismAir(Outline outline, double low, double high) {
    this.outline = outline;
    this.uv = outline.polygonised(true, ARC_ERROR);
    this.low = low;
    this.high = high;
    for (int i = 0; i < uv.length; i++) {
      around[i % 2] = Math.min(around[i % 2], uv[i]);
      around[2 + i % 2] = Math.max(around[2 + i % 2], uv[i]);
    }
  }

  @Override
  public boolean isBeyond(Vec from, Vec to, double distance) {
    return Math.max(from.x(), to.x()) + distance < around[0]
        || Math.min(from.x(), to.x()) - distance > around[2]
        || Math.max(from.y(), to.y()) + distance < around[1]
        || Math.min(from.y(), to.y()) - distance > around[3]
        || Math.max(from.z(), to.z()) + distance < low
        || Math.min(from.z(), to.z()) - distance > high;
  }

  /** The air of a station box, for segments in the station's frame. */
  static PrismAir of(Box box) {
    return new PrismAir(
        Outline.rectangle(box.low().x(), box.low().y(), box.high().x(), box.high().y()),
        box.low().z(),
        box.high().z());
  }

  @Override
  public double distance(Vec from, Vec to) {
    if (meets(from, to)) {
      return 0;
    }
    double least = Math.min(toFaces(from), toFaces(to));
    int n = uv.length;
    for (int i = 0; i < n; i += 2) {
      double u = uv[(i + 2) % n];
      double v = uv[(i + 3) % n];
      least = Math.min(least, Math.min(toWall(from, i), toWall(to, i)));
      Vec bottom = new Vec(uv[i], uv[i + 1], low);
      Vec top = new Vec(uv[i], uv[i + 1], high);
      least = Math.min(least, Segments.distance(from, to, bottom, top));
      least = Math.min(least, Segments.distance(from, to, bottom, new Vec(u, v, low)));
      least = Math.min(least, Segments.distance(from, to, top, new Vec(u, v, high)));
    }
    return least;
  }

  @Override
  public Body body(String id, Placement board) {
    return new Body(
        id,
        new Stack(List.of(new Layer(outline, high - low))),
        board.after(Placement.at(new Vec(0, 0, low))));
  }

  /** Distance to the top and bottom face, where the point lies over one; else infinite. */
  private double toFaces(Vec point) {
    if (!contains(point.x(), point.y())) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(0, Math.max(low - point.z(), point.z() - high));
  }

  /** Distance to the wall over an edge, where the point is between the heights; else infinite. */
  private double toWall(Vec point, int i) {
    if (point.z() < low || point.z() > high) {
      return Double.POSITIVE_INFINITY;
    }
    Vec p = new Vec(uv[i], uv[i + 1], point.z());
    Vec q = new Vec(uv[(i + 2) % uv.length], uv[(i + 3) % uv.length], point.z());
    return Segments.distance(point, p, q);
  }

  private boolean meets(Vec from, Vec to) {
    double rise = to.z() - from.z();
    double first = 0;
    double last = 1;
    if (rise == 0) {
      if (from.z() < low || from.z() > high) {
        return false;
      }
    } else {
      double atLow = (low - from.z()) / rise;
      double atHigh = (high - from.z()) / rise;
      first = Math.max(first, Math.min(atLow, atHigh));
      last = Math.min(last, Math.max(atLow, atHigh));
      if (first > last) {
        return false;
      }
    }
    Vec run = to.minus(from);
    Vec p = from.plus(run.scale(first));
    Vec q = from.plus(run.scale(last));
    return contains(p.x(), p.y()) || crossesRing(p, q);
  }

  private boolean crossesRing(Vec p, Vec q) {
    int n = uv.length;
    for (int i = 0; i < n; i += 2) {
      double u0 = uv[i];
      double v0 = uv[i + 1];
      double u1 = uv[(i + 2) % n];
      double v1 = uv[(i + 3) % n];
      double before = side(u0, v0, u1, v1, p.x(), p.y());
      double after = side(u0, v0, u1, v1, q.x(), q.y());
      double one = side(p.x(), p.y(), q.x(), q.y(), u0, v0);
      double other = side(p.x(), p.y(), q.x(), q.y(), u1, v1);
      if (before * after < 0 && one * other < 0) {
        return true;
      }
    }
    return false;
  }

  /** Even-odd rule; a point on the ring may fall on either side, where the distance is 0 anyway. */
  private boolean contains(double u, double v) {
    boolean inside = false;
    int n = uv.length;
    for (int i = 0; i < n; i += 2) {
      double v0 = uv[i + 1];
      double v1 = uv[(i + 3) % n];
      if (v0 > v != v1 > v) {
        double at = uv[i] + (v - v0) / (v1 - v0) * (uv[(i + 2) % n] - uv[i]);
        if (u < at) {
          inside = !inside;
        }
      }
    }
    return inside;
  }

  private static double side(double u0, double v0, double u1, double v1, double u, double v) {
    return (u1 - u0) * (v - v0) - (v1 - v0) * (u - u0);
  }
}
