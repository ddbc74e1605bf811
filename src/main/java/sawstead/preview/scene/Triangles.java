package sawstead.preview.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import sawstead.solid.Vec;

/** Collects triangles with hard edges for one mesh of the scene. */
final class Triangles {
  private final List<float[]> corners = new ArrayList<>();
  private final List<float[]> places = new ArrayList<>();

  /** A corner, mm, and the place in the picture that it shows. */
  void corner(Vec at, double s, double t) {
    corners.add(new float[] {(float) at.x(), (float) at.y(), (float) at.z()});
    places.add(new float[] {(float) s, (float) t});
  }

  /** A flat four-cornered patch, counter-clockwise from outside. */
  void patch(Vec a, Vec b, Vec c, Vec d) {
    for (Vec corner : List.of(a, b, c, a, c, d)) {
      corner(corner, 0, 0);
    }
  }

  boolean isEmpty() {
    return corners.isEmpty();
  }

  MeshView view() {
    TriangleMesh mesh = new TriangleMesh();
    int n = corners.size();
    float[] points = new float[3 * n];
    float[] pictures = new float[2 * n];
    int[] faces = new int[2 * n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(corners.get(i), 0, points, 3 * i, 3);
      System.arraycopy(places.get(i), 0, pictures, 2 * i, 2);
      faces[2 * i] = i;
      faces[2 * i + 1] = i;
    }
    mesh.getPoints().setAll(points);
    mesh.getTexCoords().setAll(pictures);
    mesh.getFaces().setAll(faces);
    // Group 0 means that no edge is smoothed over: boards have arrises.
    mesh.getFaceSmoothingGroups().setAll(new int[n / 3]);
    MeshView view = new MeshView(mesh);
    view.setCullFace(CullFace.BACK);
    return view;
  }
}
