package sawstead.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sawstead.solid.Mesh;
import sawstead.solid.Vec;

/** The lines in which a solid is drawn: its sharp edges, and the rims of what is round. */
final class Creases {
  /** Cosine of the least angle between two faces whose edge is drawn: 25 degrees. */
  private static final double FLAT = Math.cos(Math.toRadians(25));

  private static final double GRAZING = 1e-9;

  /** A straight line between two points of the mesh. */
  record Crease(Vec from, Vec to) {}

  private Creases() {}

  /**
   * The lines of a mesh.
   *
   * @param toward unit vector that points at who looks
   */
  static List<Crease> of(Mesh mesh, Vec toward) {
    Map<Long, List<Vec>> faces = new LinkedHashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec normal = mesh.normal(t);
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        long key = ((long) Math.min(a, b) << 32) | Math.max(a, b);
        faces.computeIfAbsent(key, any -> new ArrayList<>(2)).add(normal);
      }
    }
    List<Crease> creases = new ArrayList<>();
    faces.forEach(
        (key, normals) -> {
          if (isDrawn(normals, toward)) {
            int from = (int) (key >> 32);
            int to = (int) (long) key;
            creases.add(new Crease(mesh.vertex(from), mesh.vertex(to)));
          }
        });
    return creases;
  }

  private static boolean isDrawn(List<Vec> normals, Vec toward) {
    if (normals.stream().noneMatch(n -> n.dot(toward) > GRAZING)) {
      return false; // At the back.
    }
    if (normals.size() != 2) {
      return true;
    }
    double a = normals.get(0).dot(toward);
    double b = normals.get(1).dot(toward);
    boolean rim = a > GRAZING != b > GRAZING;
    return rim || normals.get(0).dot(normals.get(1)) < FLAT;
  }
}
