package sawstead.export.stl;

import java.util.Arrays;
import sawstead.export.ExportException;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/**
 * The facets of one mesh as STL holds them: single precision, normal first.
 *
 * <p>Rounding can bring corners together. A facet with two equal corners is left out: its other two
 * edges then lie on each other and run in opposite directions, so its neighbours close the gap. A
 * facet whose corners differ but lie on a line is kept, for its neighbours need its edges.
 *
 * <p>Twelve numbers for each facet: normal, then three corners, mm.
 */
final class StlFacets {
  static final int PER_FACET = 12;

  private final float[] numbers;

  private StlFacets(float[] numbers) {
    this.numbers = numbers;
  }

  static StlFacets of(Mesh mesh) {
    float[] corners = rounded(mesh);
    float[] numbers = new float[PER_FACET * mesh.triangleCount()];
    int end = 0;
    for (int triangle = 0; triangle < mesh.triangleCount(); triangle++) {
      int a = mesh.corner(triangle, 0);
      int b = mesh.corner(triangle, 1);
      int c = mesh.corner(triangle, 2);
      if (same(corners, a, b) || same(corners, b, c) || same(corners, c, a)) {
        continue;
      }
      putNormal(numbers, end, corners, a, b, c);
      System.arraycopy(corners, 3 * a, numbers, end + 3, 3);
      System.arraycopy(corners, 3 * b, numbers, end + 6, 3);
      System.arraycopy(corners, 3 * c, numbers, end + 9, 3);
      end += PER_FACET;
    }
    return new StlFacets(Arrays.copyOf(numbers, end));
  }

  /** One of the twelve numbers of a facet. */
  float number(int facet, int which) {
    return numbers[PER_FACET * facet + which];
  }

  int count() {
    return numbers.length / PER_FACET;
  }

  private static float[] rounded(Mesh mesh) {
    float[] corners = new float[3 * mesh.vertexCount()];
    for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
      corners[3 * vertex] = single(mesh.x(vertex));
      corners[3 * vertex + 1] = single(mesh.y(vertex));
      corners[3 * vertex + 2] = single(mesh.z(vertex));
    }
    return corners;
  }

  private static float single(double value) {
    // Adding zero turns -0 into 0: readers that compare bytes would take them for two points.
    float single = (float) value + 0f;
    if (!Float.isFinite(single)) {
      throw new ExportException(
          "a corner lies farther away than STL can say",
          "coordinate " + value + " mm",
          "move the part nearer to the origin");
    }
    return single;
  }

  private static boolean same(float[] corners, int a, int b) {
    return corners[3 * a] == corners[3 * b]
        && corners[3 * a + 1] == corners[3 * b + 1]
        && corners[3 * a + 2] == corners[3 * b + 2];
  }

  /** Unit normal by the right hand of the corners as written; zero when they lie on a line. */
  private static void putNormal(float[] numbers, int at, float[] corners, int a, int b, int c) {
    Vec from = point(corners, a);
    Vec normal = point(corners, b).minus(from).cross(point(corners, c).minus(from));
    double length = normal.length();
    if (length > 0) {
      numbers[at] = single(normal.x() / length);
      numbers[at + 1] = single(normal.y() / length);
      numbers[at + 2] = single(normal.z() / length);
    }
  }

  private static Vec point(float[] corners, int vertex) {
    return new Vec(corners[3 * vertex], corners[3 * vertex + 1], corners[3 * vertex + 2]);
  }
}
