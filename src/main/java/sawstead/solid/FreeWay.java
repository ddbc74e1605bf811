package sawstead.solid;

import java.util.BitSet;

/**
 * How far a body can be pushed, or grown, along a straight line before it is deeper than a
 * tolerance in another body.
 *
 * <p>Idea: growing a convex piece P along d by t gives P + [0, t] d. It is deeper than the
 * tolerance in a convex piece Q when, along each separating axis n, both ends overlap by more than
 * the tolerance. With a = max(P.n) - min(Q.n) and b = max(Q.n) - min(P.n), and n turned so that n.d
 * is not negative, that is a + t n.d > tolerance and b > tolerance: one bound on t an axis, so the
 * least t is the greatest bound. Axes are the face normals and edge products of both pieces (the
 * separating axis theorem for convex polyhedra), and the products of their edges with d, which are
 * normals of what P sweeps.
 *
 * <p>Exact up to rounding of doubles for the pieces, which have arcs as polygons on the side that
 * adds material. What is beside the way by no more than the tolerance is passed.
 */
public final class FreeWay {
  /** Below this length a product of unit directions is no axis: they are parallel. */
  private static final double PARALLEL = 1e-9;

  private final Vec direction;
  private final double tolerance;
  private final double[] ofMoving = new double[2];
  private final double[] ofStill = new double[2];
  private double bound;
  private boolean apart;

  private FreeWay(Vec direction, double tolerance) {
    this.direction = direction;
    this.tolerance = tolerance;
  }

  /**
   * The way after which the body is deeper than the tolerance in the other.
   *
   * @param body that is pushed or grown
   * @param direction of the way, any length but zero
   * @param other that stands still
   * @param tolerance depth that is allowed, mm; of a face that meets a face squarely the way is the
   *     distance plus the tolerance
   * @param reach what lies further is not looked for, mm
   * @return mm, 0 when it is that deep already, infinite when nothing is met within reach
   */
  public static double of(Body body, Vec direction, Body other, double tolerance, double reach) {
    FreeWay way = new FreeWay(direction.unit(), tolerance);
    if (!way.mayMeet(box(body.reach()), box(other.reach()), reach)) {
      return Double.POSITIVE_INFINITY;
    }
    return way.least(body, other, reach);
  }

  /**
   * Round holes are filled at first, and opened where they lie on the way found: filling makes no
   * way longer, so a way that passes no filled hole is true.
   */
  private double least(Body body, Body other, double reach) {
    BitSet openInBody = new BitSet();
    BitSet openInOther = new BitSet();
    while (true) {
      double way = least(body.cover(openInBody), other.cover(openInOther), reach);
      if (way == Double.POSITIVE_INFINITY) {
        return way;
      }
      BitSet near = body.holes(hole -> mayMeet(hole.box, box(other.reach()), way));
      BitSet passed = other.holes(hole -> mayMeet(box(body.reach()), hole.box, way));
      near.andNot(openInBody);
      passed.andNot(openInOther);
      if (near.isEmpty() && passed.isEmpty()) {
        return way;
      }
      openInBody.or(near);
      openInOther.or(passed);
    }
  }

  private double least(Piece[] moving, Piece[] still, double reach) {
    double least = Double.POSITIVE_INFINITY;
    for (Piece p : moving) {
      for (Piece q : still) {
        if (mayMeet(p.box, q.box, Math.min(least, reach))) {
          double way = between(p, q, Math.min(least, reach));
          if (way < least && way <= reach) {
            least = way;
          }
        }
      }
    }
    return least;
  }

  /** Whether the box, grown by the reach along the way, overlaps the other by the tolerance. */
  private boolean mayMeet(double[] p, double[] q, double reach) {
    double[] d = {direction.x(), direction.y(), direction.z()};
    for (int k = 0; k < 3; k++) {
      double low = p[k] + Math.min(0, d[k] * reach);
      double high = p[3 + k] + Math.max(0, d[k] * reach);
      if (high < q[k] || low > q[3 + k]) {
        return false;
      }
    }
    return true;
  }

  /** The way to q; anything from {@code limit} on when it is no nearer than that. */
  private double between(Piece p, Piece q, double limit) {
    bound = 0;
    apart = false;
    axes(p, q, p.planes, 4);
    axes(p, q, q.planes, 4);
    // Every axis only moves the start further away: faces alone rule most pairs out, and the
    // products of edges, which cost far more, are left for the few that may be nearest.
    if (apart || bound > limit) {
      return Double.POSITIVE_INFINITY;
    }
    double[] d = {direction.x(), direction.y(), direction.z()};
    products(p, q, p.edges, d);
    products(p, q, q.edges, d);
    products(p, q, p.edges, q.edges);
    return apart ? Double.POSITIVE_INFINITY : bound;
  }

  private void axes(Piece p, Piece q, double[] normals, int stride) {
    for (int i = 0; i < normals.length && !apart; i += stride) {
      axis(p, q, normals[i], normals[i + 1], normals[i + 2]);
    }
  }

  private void products(Piece p, Piece q, double[] first, double[] second) {
    // The edges around two prisms on one axis all cross in the direction of that axis.
    double[] last = new double[3];
    for (int i = 0; i < first.length; i += 3) {
      for (int j = 0; j < second.length && !apart; j += 3) {
        double x = first[i + 1] * second[j + 2] - first[i + 2] * second[j + 1];
        double y = first[i + 2] * second[j] - first[i] * second[j + 2];
        double z = first[i] * second[j + 1] - first[i + 1] * second[j];
        double length = Math.sqrt(x * x + y * y + z * z);
        if (length > PARALLEL && !Penetration.isAlong(last, x / length, y / length, z / length)) {
          last[0] = x / length;
          last[1] = y / length;
          last[2] = z / length;
          axis(p, q, last[0], last[1], last[2]);
        }
      }
    }
  }

  /** Takes in what one axis has to say: a later start, or that the pieces pass each other. */
  private void axis(Piece p, Piece q, double x, double y, double z) {
    double along = x * direction.x() + y * direction.y() + z * direction.z();
    if (along < 0) {
      axis(p, q, -x, -y, -z);
      return;
    }
    p.span(x, y, z, ofMoving);
    q.span(x, y, z, ofStill);
    double behind = ofStill[1] - ofMoving[0];
    if (behind <= tolerance) {
      apart = true;
      return;
    }
    double ahead = ofMoving[1] - ofStill[0];
    if (ahead <= tolerance) {
      if (along < PARALLEL) {
        apart = true;
      } else {
        bound = Math.max(bound, (tolerance - ahead) / along);
      }
    }
  }

  private static double[] box(Box box) {
    return new double[] {
      box.low().x(), box.low().y(), box.low().z(), box.high().x(), box.high().y(), box.high().z()
    };
  }
}
