package sawstead.solid;

import java.util.Arrays;
import java.util.List;

/**
 * Cuts a convex polyhedron by half-spaces, one after the other, on arrays that are used again.
 *
 * <p>Each corner is either kept (n . p <= offset) or not; each edge between a kept corner and
 * another gets one new corner, shared by both faces of the edge; the cut faces' open ends are
 * chained into the face on the plane. The result is closed by construction whatever the rounding of
 * the distances, so its volume by the divergence theorem is good to rounding.
 *
 * <p>Not for use by two threads at once.
 */
final class Clipper {
  private double[] points = new double[384];
  private int pointCount;
  private Faces faces = new Faces();
  private Faces spare = new Faces();
  private double[] away = new double[128];
  private int[] crossings = new int[192];
  private int crossingCount;
  private int[] capNext = new int[128];

  /** Loops of corners with their planes. */
  private static final class Faces {
    private int[] starts = new int[65];
    private int[] loops = new int[256];
    private double[] planes = new double[256];
    private int count;

    int end() {
      return starts[count];
    }

    void add(int corner, int at) {
      if (at == loops.length) {
        loops = Arrays.copyOf(loops, 2 * at);
      }
      loops[at] = corner;
    }

    void close(int end, double[] from, int plane) {
      if (4 * count + 4 > planes.length) {
        planes = Arrays.copyOf(planes, 2 * planes.length);
        starts = Arrays.copyOf(starts, planes.length / 4 + 1);
      }
      System.arraycopy(from, plane, planes, 4 * count, 4);
      count++;
      starts[count] = end;
    }
  }

  /** The piece within all half-spaces, or null if nothing remains of it. */
  Piece cut(Piece piece, List<Plane> planes) {
    load(piece);
    for (Plane p : planes) {
      if (!cut(new double[] {p.nx(), p.ny(), p.nz(), p.offset()}, 0)) {
        return null;
      }
    }
    double[] moments = new double[4];
    addMoments(moments);
    return moments[0] > 0 ? piece() : null;
  }

  /**
   * Adds volume and first moments of what two pieces share.
   *
   * @param sums volume, volume times x, times y, times z
   */
  void addShared(Piece a, Piece b, double[] sums) {
    load(a);
    for (int f = 0; f < b.planes.length; f += 4) {
      if (!cut(b.planes, f)) {
        return;
      }
    }
    addMoments(sums);
  }

  private void load(Piece piece) {
    pointCount = piece.points.length / 3;
    if (points.length < piece.points.length) {
      points = new double[2 * piece.points.length];
    }
    System.arraycopy(piece.points, 0, points, 0, piece.points.length);
    faces.count = 0;
    for (int f = 0; f < piece.faceCount(); f++) {
      int end = faces.end();
      for (int k = piece.starts[f]; k < piece.starts[f + 1]; k++) {
        faces.add(piece.loops[k], end++);
      }
      faces.close(end, piece.planes, 4 * f);
    }
  }

  /** Keeps n . p <= offset; false if nothing is kept. */
  private boolean cut(double[] plane, int at) {
    if (away.length < pointCount) {
      away = new double[2 * pointCount];
    }
    boolean some = false;
    boolean all = true;
    for (int i = 0; i < faces.end(); i++) {
      int p = faces.loops[i];
      double d =
          plane[at] * points[3 * p]
              + plane[at + 1] * points[3 * p + 1]
              + plane[at + 2] * points[3 * p + 2]
              - plane[at + 3];
      away[p] = d;
      some |= d <= 0;
      all &= d <= 0;
    }
    if (all || !some) {
      return some;
    }
    crossingCount = 0;
    int oldPoints = pointCount;
    spare.count = 0;
    for (int f = 0; f < faces.count; f++) {
      cutFace(f);
    }
    addCaps(oldPoints, plane, at);
    Faces swap = faces;
    faces = spare;
    spare = swap;
    return true;
  }

  private void cutFace(int f) {
    int end = spare.end();
    int firstEntry = -1;
    int exit = -1;
    for (int k = faces.starts[f]; k < faces.starts[f + 1]; k++) {
      int a = faces.loops[k];
      int b = faces.loops[k + 1 < faces.starts[f + 1] ? k + 1 : faces.starts[f]];
      boolean aKept = away[a] <= 0;
      boolean bKept = away[b] <= 0;
      if (aKept) {
        spare.add(a, end++);
      }
      if (aKept && !bKept) {
        exit = crossing(a, b);
        spare.add(exit, end++);
      } else if (!aKept && bKept) {
        int entry = crossing(b, a);
        spare.add(entry, end++);
        if (exit >= 0) {
          capNext[entry] = exit;
          exit = -1;
        } else {
          firstEntry = entry;
        }
      }
    }
    if (exit >= 0) {
      capNext[firstEntry] = exit;
    }
    if (end > spare.end()) {
      spare.close(end, faces.planes, 4 * f);
    }
  }

  /** The new corner on the edge from a kept corner to one that is not. */
  private int crossing(int in, int out) {
    for (int i = 0; i < crossingCount; i += 3) {
      if (crossings[i] == in && crossings[i + 1] == out) {
        return crossings[i + 2];
      }
    }
    if (crossingCount + 3 > crossings.length) {
      crossings = Arrays.copyOf(crossings, 2 * crossings.length);
    }
    if (3 * pointCount + 3 > points.length) {
      points = Arrays.copyOf(points, 2 * points.length);
    }
    if (pointCount >= capNext.length) {
      capNext = Arrays.copyOf(capNext, 2 * pointCount);
    }
    double t = away[in] / (away[in] - away[out]);
    for (int k = 0; k < 3; k++) {
      double from = points[3 * in + k];
      points[3 * pointCount + k] = from + t * (points[3 * out + k] - from);
    }
    crossings[crossingCount++] = in;
    crossings[crossingCount++] = out;
    crossings[crossingCount++] = pointCount;
    return pointCount++;
  }

  private void addCaps(int oldPoints, double[] plane, int at) {
    for (int first = oldPoints; first < pointCount; first++) {
      if (capNext[first] < 0) {
        continue;
      }
      int end = spare.end();
      int p = first;
      while (capNext[p] >= 0) {
        spare.add(p, end++);
        int then = capNext[p];
        capNext[p] = -1;
        p = then;
      }
      spare.close(end, plane, at);
    }
  }

  private void addMoments(double[] sums) {
    int o = faces.loops[0];
    double x0 = points[3 * o];
    double y0 = points[3 * o + 1];
    double z0 = points[3 * o + 2];
    double volume = 0;
    double mx = 0;
    double my = 0;
    double mz = 0;
    for (int f = 0; f < faces.count; f++) {
      int a = faces.loops[faces.starts[f]];
      for (int k = faces.starts[f] + 1; k + 1 < faces.starts[f + 1]; k++) {
        int b = faces.loops[k];
        int c = faces.loops[k + 1];
        double v = Flat.volume6(points, o, a, b, c) / 6;
        volume += v;
        mx += v * (points[3 * a] + points[3 * b] + points[3 * c] - 3 * x0) / 4;
        my += v * (points[3 * a + 1] + points[3 * b + 1] + points[3 * c + 1] - 3 * y0) / 4;
        mz += v * (points[3 * a + 2] + points[3 * b + 2] + points[3 * c + 2] - 3 * z0) / 4;
      }
    }
    sums[0] += volume;
    sums[1] += mx + volume * x0;
    sums[2] += my + volume * y0;
    sums[3] += mz + volume * z0;
  }

  private Piece piece() {
    int[] renamed = new int[pointCount];
    Arrays.fill(renamed, -1);
    double[] kept = new double[3 * pointCount];
    int n = 0;
    int[] loops = Arrays.copyOf(faces.loops, faces.end());
    for (int i = 0; i < loops.length; i++) {
      if (renamed[loops[i]] < 0) {
        System.arraycopy(points, 3 * loops[i], kept, 3 * n, 3);
        renamed[loops[i]] = n++;
      }
      loops[i] = renamed[loops[i]];
    }
    return new Piece(
        Arrays.copyOf(kept, 3 * n),
        Arrays.copyOf(faces.planes, 4 * faces.count),
        Arrays.copyOf(faces.starts, faces.count + 1),
        loops,
        null);
  }
}
