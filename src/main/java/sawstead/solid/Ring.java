package sawstead.solid;

import java.util.Arrays;
import java.util.List;

/**
 * A closed polygon on the grid that stands for an outline; neighbouring corners differ.
 *
 * @param uv corners u0, v0, ..., multiples of {@link Slabs#GRID}
 * @param arcOf index of the circle that the edge leaving each corner stands for, or -1
 * @param arcs those circles
 */
record Ring(double[] uv, int[] arcOf, List<Arc> arcs) {
  static Ring of(Outline outline, boolean adds) {
    Trace trace = Trace.of(outline, adds, Outline.ARC_ERROR);
    double[] uv = new double[trace.uv().length];
    int[] arcOf = new int[trace.arcOf().length];
    int n = 0;
    for (int i = 0; i < arcOf.length; i++) {
      double u = Slabs.snap(trace.uv()[2 * i]);
      double v = Slabs.snap(trace.uv()[2 * i + 1]);
      if (n > 0 && u == uv[2 * n - 2] && v == uv[2 * n - 1]) {
        n--;
      }
      uv[2 * n] = u;
      uv[2 * n + 1] = v;
      arcOf[n++] = trace.arcOf()[i];
    }
    while (n > 1 && uv[0] == uv[2 * n - 2] && uv[1] == uv[2 * n - 1]) {
      n--;
    }
    return new Ring(Arrays.copyOf(uv, 2 * n), Arrays.copyOf(arcOf, n), trace.arcs());
  }

  int size() {
    return arcOf.length;
  }

  boolean isAxisParallel() {
    for (int i = 0; i < size(); i++) {
      int j = (i + 1) % size();
      if (uv[2 * i] != uv[2 * j] && uv[2 * i + 1] != uv[2 * j + 1]) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ring r && Arrays.equals(uv, r.uv);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(uv);
  }
}
