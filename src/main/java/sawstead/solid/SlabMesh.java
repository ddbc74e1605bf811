package sawstead.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Mesh of slabs: a lid wherever material ends upward or downward, a wall wherever it ends sideways
 * within a level. Closed because both sides of every edge are asked the same question.
 */
final class SlabMesh {
  private static final BitSet NOTHING = new BitSet();

  private final Slabs slabs;
  private final Plan plan;
  private final int[] indices;
  private final List<Integer> used = new ArrayList<>();
  private int[] triangles = new int[192];
  private int count;

  private SlabMesh(Slabs slabs) {
    this.slabs = slabs;
    this.plan = slabs.plan();
    this.indices = new int[plan.uv().length / 2 * slabs.heights().length];
    Arrays.fill(indices, -1);
  }

  static Mesh of(Slabs slabs) {
    SlabMesh mesh = new SlabMesh(slabs);
    for (int t = 0; t < mesh.plan.size(); t++) {
      mesh.lids(t);
      for (int k = 0; k < 3; k++) {
        mesh.walls(t, 3 * t + k);
      }
    }
    return new Mesh(mesh.vertices(), Arrays.copyOf(mesh.triangles, mesh.count));
  }

  private void lids(int t) {
    BitSet column = plan.columns().get(t);
    int a = plan.triangles()[3 * t];
    int b = plan.triangles()[3 * t + 1];
    int c = plan.triangles()[3 * t + 2];
    for (int k = 0; k < slabs.heights().length; k++) {
      boolean below = k > 0 && column.get(k - 1);
      boolean above = column.get(k);
      if (below && !above) {
        add(index(a, k), index(b, k), index(c, k));
      } else if (above && !below) {
        add(index(c, k), index(b, k), index(a, k));
      }
    }
  }

  private void walls(int t, int h) {
    BitSet column = plan.columns().get(t);
    BitSet beside = plan.twins()[h] < 0 ? NOTHING : plan.columns().get(plan.twins()[h] / 3);
    int a = plan.triangles()[h];
    int b = plan.triangles()[Plan.next(h)];
    for (int k = column.nextSetBit(0); k >= 0; k = column.nextSetBit(k + 1)) {
      if (!beside.get(k)) {
        add(index(a, k), index(b, k), index(b, k + 1));
        add(index(a, k), index(b, k + 1), index(a, k + 1));
      }
    }
  }

  private int index(int vertex, int height) {
    int key = vertex * slabs.heights().length + height;
    if (indices[key] < 0) {
      indices[key] = used.size();
      used.add(key);
    }
    return indices[key];
  }

  private void add(int a, int b, int c) {
    if (count + 3 > triangles.length) {
      triangles = Arrays.copyOf(triangles, 2 * triangles.length);
    }
    triangles[count++] = a;
    triangles[count++] = b;
    triangles[count++] = c;
  }

  private double[] vertices() {
    double[] xyz = new double[3 * used.size()];
    for (int i = 0; i < used.size(); i++) {
      int vertex = used.get(i) / slabs.heights().length;
      xyz[3 * i] = plan.u(vertex);
      xyz[3 * i + 1] = plan.v(vertex);
      xyz[3 * i + 2] = slabs.heights()[used.get(i) % slabs.heights().length];
    }
    return xyz;
  }
}
