package sawstead.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** What a ring of corners must keep to be an outline. */
final class OutlineRules {
  private static final GeometryFactory JTS = new GeometryFactory();

  private OutlineRules() {}

  /** Without edges below the shortest; refuses when too few corners remain. */
  static List<Corner> merged(List<Corner> corners) {
    List<Corner> kept = new ArrayList<>();
    for (Corner c : corners) {
      if (kept.isEmpty()) {
        kept.add(c);
        continue;
      }
      Corner last = kept.get(kept.size() - 1);
      if (last.distance(c) >= Outline.SHORTEST_EDGE) {
        kept.add(c);
      } else {
        demandShortArc(last, c);
        kept.set(kept.size() - 1, last.withBulge(c.bulge()));
      }
    }
    while (kept.size() > 1
        && kept.get(kept.size() - 1).distance(kept.get(0)) < Outline.SHORTEST_EDGE) {
      demandShortArc(kept.get(kept.size() - 1), kept.get(0));
      kept.remove(kept.size() - 1);
    }
    boolean round = kept.stream().anyMatch(c -> c.bulge() != 0);
    int least = round ? 2 : 3;
    if (kept.size() < least) {
      throw new OutlineException(
          "an outline needs at least "
              + least
              + (round ? " corners with arcs" : " corners")
              + ", found "
              + kept.size()
              + " that differ by more than 0.001 mm");
    }
    return kept;
  }

  private static void demandShortArc(Corner from, Corner to) {
    if (from.bulge() != 0 && from.distance(to) * Math.abs(from.bulge()) > Outline.SHORTEST_EDGE) {
      throw new OutlineException(
          "a nearly full circle at ("
              + from.u()
              + ", "
              + from.v()
              + ") needs a second corner: write it as two arcs");
    }
  }

  static List<Corner> reversed(List<Corner> corners) {
    int n = corners.size();
    List<Corner> back = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Corner at = corners.get((n - i) % n);
      // The edge that left the corner before now arrives from here, the other way round.
      back.add(at.withBulge(-corners.get((2 * n - i - 1) % n).bulge()));
    }
    return back;
  }

  /** Signed area with true arcs, mm2, positive counter-clockwise. */
  static double area(List<Corner> corners) {
    Corner base = corners.get(0);
    double twice = 0;
    double arcs = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      twice += (a.u() - base.u()) * (b.v() - base.v()) - (b.u() - base.u()) * (a.v() - base.v());
      if (a.bulge() != 0) {
        arcs += Arc.between(a, b).segmentArea();
      }
    }
    return twice / 2 + arcs;
  }

  static void demandArea(List<Corner> corners) {
    double around = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      around += a.bulge() != 0 ? Arc.between(a, b).length() : a.distance(b);
    }
    double area = area(corners);
    if (!(area > around * Slabs.GRID)) {
      throw new OutlineException(
          "an outline must enclose an area, found " + area + " mm2 within " + around + " mm");
    }
  }

  /** True for four corners that make a rectangle along u and v, which needs no further check. */
  static boolean isPlainRectangle(List<Corner> c) {
    if (c.size() != 4 || c.stream().anyMatch(k -> k.bulge() != 0)) {
      return false;
    }
    int turn = c.get(0).v() == c.get(1).v() ? 0 : 1;
    Corner p = c.get(turn);
    Corner q = c.get(turn + 1);
    Corner r = c.get((turn + 2) % 4);
    Corner s = c.get((turn + 3) % 4);
    return p.v() == q.v() && q.u() == r.u() && r.v() == s.v() && s.u() == p.u();
  }

  /** Refuses a ring that crosses or touches itself, on either side of its arcs. */
  static void demandSimple(List<Corner> corners) {
    boolean round = corners.stream().anyMatch(c -> c.bulge() != 0);
    demandSimple(Trace.of(corners, true, Outline.ARC_ERROR).uv());
    if (round) {
      demandSimple(Trace.of(corners, false, Outline.ARC_ERROR).uv());
    }
  }

  private static void demandSimple(double[] uv) {
    int n = uv.length / 2;
    Coordinate[] ring = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      int k = i % n;
      ring[i] = new Coordinate(uv[2 * k], uv[2 * k + 1]);
    }
    TopologyValidationError fault = new IsValidOp(JTS.createPolygon(ring)).getValidationError();
    if (fault != null) {
      Coordinate at = fault.getCoordinate();
      throw OutlineException.crossing(at.x, at.y);
    }
  }

  /** Even-odd rule on the chords, corrected by the circular segments. */
  static boolean contains(Outline outline, double u, double v) {
    boolean in = false;
    for (int i = 0; i < outline.corners().size(); i++) {
      Corner a = outline.corners().get(i);
      Corner b = outline.next(i);
      if ((a.v() > v) != (b.v() > v)
          && u < a.u() + (b.u() - a.u()) * (v - a.v()) / (b.v() - a.v())) {
        in = !in;
      }
      if (outline.isArc(i) && inSegment(a, b, outline.arc(i), u, v)) {
        in = !in;
      }
    }
    return in || onRing(outline, u, v);
  }

  private static boolean inSegment(Corner a, Corner b, Arc arc, double u, double v) {
    double side = (b.u() - a.u()) * (v - a.v()) - (b.v() - a.v()) * (u - a.u());
    // The chord itself belongs to the half that the even-odd rule puts it in: left of its run.
    boolean beyond = arc.angle() > 0 ? side < 0 : side >= 0;
    return beyond && Math.hypot(u - arc.centreU(), v - arc.centreV()) < arc.radius();
  }

  private static boolean onRing(Outline outline, double u, double v) {
    double near = 1e-9;
    for (int i = 0; i < outline.corners().size(); i++) {
      Corner a = outline.corners().get(i);
      Corner b = outline.next(i);
      if (outline.isArc(i)) {
        Arc arc = outline.arc(i);
        double off = Math.hypot(u - arc.centreU(), v - arc.centreV()) - arc.radius();
        if (Math.abs(off) <= near && arc.spans(Math.atan2(v - arc.centreV(), u - arc.centreU()))) {
          return true;
        }
      }
      double length = a.distance(b);
      double along = ((u - a.u()) * (b.u() - a.u()) + (v - a.v()) * (b.v() - a.v())) / length;
      double across = ((b.u() - a.u()) * (v - a.v()) - (b.v() - a.v()) * (u - a.u())) / length;
      boolean beside = along >= -near && along <= length + near;
      if (!outline.isArc(i) && beside && Math.abs(across) <= near) {
        return true;
      }
    }
    return false;
  }

  static List<Corner> rounded(List<Corner> corners, double radius) {
    int n = corners.size();
    double[] cut = new double[n];
    for (int i = 0; i < n; i++) {
      cut[i] =
          setback(corners.get((i + n - 1) % n), corners.get(i), corners.get((i + 1) % n), radius);
    }
    List<Corner> to = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Corner a = corners.get((i + n - 1) % n);
      Corner at = corners.get(i);
      Corner b = corners.get((i + 1) % n);
      if (cut[i] + cut[(i + 1) % n] > at.distance(b) * (1 + 1e-12)) {
        throw new OutlineException(
            "a corner radius of "
                + radius
                + " mm does not fit the edge of "
                + at.distance(b)
                + " mm from ("
                + at.u()
                + ", "
                + at.v()
                + ")");
      }
      if (cut[i] == 0) {
        to.add(at);
      } else {
        double turn = turning(a, at, b);
        to.add(towards(at, a, cut[i]).withBulge(Math.tan(turn / 4)));
        to.add(towards(at, b, cut[i]).withBulge(at.bulge()));
      }
    }
    return to;
  }

  /** How far from a corner its rounding begins; 0 where the corner stays as it is. */
  private static double setback(Corner a, Corner at, Corner b, double radius) {
    double turn = turning(a, at, b);
    boolean straight = a.bulge() == 0 && at.bulge() == 0;
    return straight && turn > 1e-9 ? radius * Math.tan(turn / 2) : 0;
  }

  private static double turning(Corner a, Corner at, Corner b) {
    double u0 = at.u() - a.u();
    double v0 = at.v() - a.v();
    double u1 = b.u() - at.u();
    double v1 = b.v() - at.v();
    return Math.atan2(u0 * v1 - v0 * u1, u0 * u1 + v0 * v1);
  }

  private static Corner towards(Corner from, Corner to, double by) {
    double part = by / from.distance(to);
    return Corner.of(from.u() + (to.u() - from.u()) * part, from.v() + (to.v() - from.v()) * part);
  }
}
