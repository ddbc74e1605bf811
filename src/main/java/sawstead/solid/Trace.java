package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An outline with its arcs replaced by polygons on one side, each edge still knowing its circle.
 *
 * <p>On the side that must hold the arc, the polygon's edges are tangents (corners at half angles,
 * radius r / cos(theta / 2)); on the other, chords. Arcs that continue one another on one circle
 * are divided as one; a full circle becomes a regular polygon whose number of corners is a multiple
 * of four, so that it reaches exactly as far along u and v as the circle does.
 *
 * @param uv corners u0, v0, u1, v1, ...
 * @param arcOf for the edge that leaves each corner, the index of its circle, or -1
 * @param arcs circles, each a whole run of arcs
 */
record Trace(double[] uv, int[] arcOf, List<Arc> arcs) {
  /** Coarsest division: no edge stands for more than 45 degrees. */
  private static final double COARSEST = Math.PI / 4;

  static Trace of(Outline outline, boolean outward, double tolerance) {
    return of(outline.corners(), outward, tolerance);
  }

  static Trace of(List<Corner> corners, boolean outward, double tolerance) {
    return new Builder(outward, tolerance).ring(corners);
  }

  private static final class Builder {
    private final boolean outward;
    private final double tolerance;
    private double[] uv = new double[64];
    private int[] arcOf = new int[32];
    private int count;
    private final List<Arc> arcs = new ArrayList<>();

    Builder(boolean outward, double tolerance) {
      this.outward = outward;
      this.tolerance = tolerance;
    }

    Trace ring(List<Corner> corners) {
      int n = corners.size();
      Arc[] of = new Arc[n];
      for (int i = 0; i < n; i++) {
        if (corners.get(i).bulge() != 0) {
          of[i] = Arc.between(corners.get(i), corners.get((i + 1) % n));
        }
      }
      int first = 0;
      while (first < n && continues(of, first)) {
        first++;
      }
      if (first == n) {
        circle(of);
      } else {
        int i = 0;
        while (i < n) {
          int at = (first + i) % n;
          Corner from = corners.get(at);
          if (of[at] == null) {
            add(from.u(), from.v(), -1);
            i++;
            continue;
          }
          Arc run = of[at];
          i++;
          while (i < n && continues(of, (first + i) % n)) {
            run = run.joined(of[(first + i) % n]);
            i++;
          }
          arc(from, run);
        }
      }
      return new Trace(Arrays.copyOf(uv, 2 * count), Arrays.copyOf(arcOf, count), arcs);
    }

    /** True if the edge leaving this corner goes on along the circle of the edge before. */
    private static boolean continues(Arc[] of, int at) {
      Arc before = of[(at + of.length - 1) % of.length];
      return before != null && of[at] != null && before.continues(of[at]);
    }

    private void circle(Arc[] of) {
      Arc run = of[0];
      double turn = Math.signum(run.angle()) * 2 * Math.PI;
      int parts = 4 * ((parts(run, 2 * Math.PI, outward == turn > 0) + 3) / 4);
      boolean tangents = outward == turn > 0;
      double step = turn / parts;
      double radius = tangents ? run.radius() / Math.cos(step / 2) : run.radius();
      arcs.add(run);
      for (int k = 0; k < parts; k++) {
        double at = (tangents ? k + 0.5 : k) * step;
        add(run.centreU() + radius * Math.cos(at), run.centreV() + radius * Math.sin(at), 0);
      }
    }

    private void arc(Corner from, Arc run) {
      boolean tangents = outward == run.angle() > 0;
      int parts = parts(run, Math.abs(run.angle()), tangents);
      double step = run.angle() / parts;
      int index = arcs.size();
      arcs.add(run);
      add(from.u(), from.v(), index);
      double radius = tangents ? run.radius() / Math.cos(step / 2) : run.radius();
      for (int k = tangents ? 0 : 1; k < parts; k++) {
        double at = run.start() + (tangents ? k + 0.5 : k) * step;
        add(run.centreU() + radius * Math.cos(at), run.centreV() + radius * Math.sin(at), index);
      }
    }

    private int parts(Arc run, double angle, boolean tangents) {
      double ratio = tolerance / run.radius();
      double half = Math.acos(tangents ? 1 / (1 + ratio) : Math.max(0, 1 - ratio));
      return (int) Math.ceil(angle / Math.min(COARSEST, 2 * half) - 1e-9);
    }

    private void add(double u, double v, int arc) {
      if (2 * count == uv.length) {
        uv = Arrays.copyOf(uv, 2 * uv.length);
        arcOf = Arrays.copyOf(arcOf, 2 * arcOf.length);
      }
      uv[2 * count] = u;
      uv[2 * count + 1] = v;
      arcOf[count++] = arc;
    }
  }
}
