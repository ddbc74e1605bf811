package sawstead.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Closed ring of straight and circular edges in the plane (u, v) of a panel, mm.
 *
 * <p>Invariants: counter-clockwise (a ring given clockwise is reversed, its first corner stays
 * first); no edge shorter than {@link #SHORTEST_EDGE} (shorter ones are merged into their
 * neighbour); it encloses an area and does not touch or cross itself, judged with arcs replaced by
 * polygons within {@link #ARC_ERROR} on either side.
 *
 * @param corners at least three, or two when an edge is an arc
 */
public record Outline(List<Corner> corners) {
  /** Edges below this length, 2^-10 mm, are merged: a hundredth of what a saw can cut. */
  public static final double SHORTEST_EDGE = 1.0 / 1024;

  /** Greatest distance between an arc and the polygon that stands for it, mm. */
  public static final double ARC_ERROR = 0.02;

  /** Cleans, turns counter-clockwise and refuses what encloses nothing or crosses itself. */
  public Outline {
    List<Corner> clean = OutlineRules.merged(corners);
    if (OutlineRules.area(clean) < 0) {
      clean = OutlineRules.reversed(clean);
    }
    corners = List.copyOf(clean);
    if (!OutlineRules.isPlainRectangle(corners)) {
      OutlineRules.demandSimple(corners);
    }
    OutlineRules.demandArea(corners);
  }

  /** Rectangle between two opposite corners. */
  public static Outline rectangle(double u0, double v0, double u1, double v1) {
    return polygon(u0, v0, u1, v0, u1, v1, u0, v1);
  }

  /** Polygon from u and v of each corner in turn. */
  public static Outline polygon(double... uv) {
    if (uv.length % 2 != 0) {
      throw new OutlineException(
          "a polygon needs two numbers for each corner, found " + uv.length + " numbers");
    }
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < uv.length; i += 2) {
      corners.add(Corner.of(uv[i], uv[i + 1]));
    }
    return new Outline(corners);
  }

  /** Ring of corners, straight or with bulges. */
  public static Outline polygon(List<Corner> corners) {
    return new Outline(corners);
  }

  /** Circle as two half circles. */
  public static Outline circle(double u, double v, double diameter) {
    demandPositive("diameter of a circle", diameter);
    double r = diameter / 2;
    return new Outline(List.of(new Corner(u - r, v, 1), new Corner(u + r, v, 1)));
  }

  /**
   * Slot with round ends: everything within half of {@code width} of the line between two points.
   */
  public static Outline slot(double fromU, double fromV, double toU, double toV, double width) {
    demandPositive("width of a slot", width);
    double length = Math.hypot(toU - fromU, toV - fromV);
    if (length < SHORTEST_EDGE) {
      return circle(fromU, fromV, width);
    }
    double nu = -(toV - fromV) / length * width / 2;
    double nv = (toU - fromU) / length * width / 2;
    return new Outline(
        List.of(
            new Corner(fromU - nu, fromV - nv, 0),
            new Corner(toU - nu, toV - nv, 1),
            new Corner(toU + nu, toV + nv, 0),
            new Corner(fromU + nu, fromV + nv, 1)));
  }

  /** Bar with square ends exactly at its two points, {@code width} wide. */
  public static Outline bar(double fromU, double fromV, double toU, double toV, double width) {
    demandPositive("width of a bar", width);
    double length = Math.hypot(toU - fromU, toV - fromV);
    if (length < SHORTEST_EDGE) {
      throw new OutlineException(
          "a bar needs two different ends, found both at (" + fromU + ", " + fromV + ")");
    }
    double nu = -(toV - fromV) / length * width / 2;
    double nv = (toU - fromU) / length * width / 2;
    return polygon(
        fromU - nu, fromV - nv, toU - nu, toV - nv, toU + nu, toV + nv, fromU + nu, fromV + nv);
  }

  /**
   * The same outline with every convex corner between straight edges rounded.
   *
   * @param radius mm
   * @throws OutlineException if an edge is too short for its rounded corners
   */
  public Outline rounded(double radius) {
    demandPositive("radius of a corner", radius);
    return new Outline(OutlineRules.rounded(corners, radius));
  }

  /** The same outline moved by (du, dv) mm. */
  public Outline moved(double du, double dv) {
    List<Corner> to = new ArrayList<>();
    for (Corner c : corners) {
      to.add(new Corner(c.u() + du, c.v() + dv, c.bulge()));
    }
    return new Outline(to);
  }

  /** Enclosed area with true arcs, mm2. */
  public double area() {
    return OutlineRules.area(corners);
  }

  /** Length of all edges with true arcs, mm. */
  public double perimeter() {
    double sum = 0;
    for (int i = 0; i < corners.size(); i++) {
      sum += isArc(i) ? arc(i).length() : corners.get(i).distance(next(i));
    }
    return sum;
  }

  /** Bounds with true arcs, as a box of no height at w = 0, mm. */
  public Box bounds() {
    double[] b = {
      Double.POSITIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (int i = 0; i < corners.size(); i++) {
      include(b, corners.get(i).u(), corners.get(i).v());
      if (isArc(i)) {
        Arc arc = arc(i);
        if (arc.spans(0)) {
          include(b, arc.centreU() + arc.radius(), arc.centreV());
        }
        if (arc.spans(Math.PI / 2)) {
          include(b, arc.centreU(), arc.centreV() + arc.radius());
        }
        if (arc.spans(Math.PI)) {
          include(b, arc.centreU() - arc.radius(), arc.centreV());
        }
        if (arc.spans(-Math.PI / 2)) {
          include(b, arc.centreU(), arc.centreV() - arc.radius());
        }
      }
    }
    return new Box(new Vec(b[0], b[1], 0), new Vec(b[2], b[3], 0));
  }

  /** True if (u, v) is inside or, to rounding, on the true outline. */
  public boolean contains(double u, double v) {
    return OutlineRules.contains(this, u, v);
  }

  /** True if the edge that leaves this corner is an arc. */
  public boolean isArc(int corner) {
    return corners.get(corner).bulge() != 0;
  }

  /** True if this is one full circle. */
  public boolean isCircle() {
    if (!isArc(0)) {
      return false;
    }
    Arc first = arc(0);
    double turn = first.angle();
    for (int i = 1; i < corners.size(); i++) {
      if (!isArc(i) || !first.continues(arc(i))) {
        return false;
      }
      turn += arc(i).angle();
    }
    return Math.abs(turn - 2 * Math.PI) < 1e-9;
  }

  /**
   * Ring u0, v0, u1, v1, ... with every arc as a polygon on the side that adds material.
   *
   * @param outward true for an outline of material: the polygon holds the true shape; false for an
   *     opening: the true shape holds the polygon
   * @param tolerance greatest distance between arc and polygon, mm
   */
  public double[] polygonised(boolean outward, double tolerance) {
    return Trace.of(this, outward, tolerance).uv();
  }

  /** The circle that the edge leaving this corner lies on. */
  Arc arc(int corner) {
    return Arc.between(corners.get(corner), next(corner));
  }

  Corner next(int corner) {
    return corners.get((corner + 1) % corners.size());
  }

  /** Corners from the given one on, round to the one before it. */
  List<Corner> startingAt(int corner) {
    List<Corner> turned = new ArrayList<>(corners);
    Collections.rotate(turned, -corner);
    return turned;
  }

  static void demandPositive(String what, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new OutlineException("the " + what + " must be more than 0 mm, found " + value);
    }
  }

  private static void include(double[] b, double u, double v) {
    b[0] = Math.min(b[0], u);
    b[1] = Math.min(b[1], v);
    b[2] = Math.max(b[2], u);
    b[3] = Math.max(b[3], v);
  }
}
