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
  private TriangleMesh mesh;

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

  /** What of the triangles lies on this side of a section; cut ones are cut. */
  Triangles within(Section.Half half) {
    Triangles kept = new Triangles();
    for (int t = 0; t < corners.size(); t += 3) {
      List<float[]> ring = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        int a = t + k;
        int b = t + (k + 1) % 3;
        double da = half.beyond(at(a));
        double db = half.beyond(at(b));
        if (da <= 0) {
          ring.add(mixed(a, b, 0));
        }
        if (da < 0 && db > 0 || da > 0 && db < 0) {
          ring.add(mixed(a, b, da / (da - db)));
        }
      }
      for (int i = 2; i < ring.size(); i++) {
        for (float[] c : List.of(ring.get(0), ring.get(i - 1), ring.get(i))) {
          kept.corner(new Vec(c[0], c[1], c[2]), c[3], c[4]);
        }
      }
    }
    return kept;
  }

  private Vec at(int i) {
    float[] c = corners.get(i);
    return new Vec(c[0], c[1], c[2]);
  }

  private float[] mixed(int a, int b, double part) {
    float[] mixed = new float[5];
    for (int k = 0; k < 5; k++) {
      float from = k < 3 ? corners.get(a)[k] : places.get(a)[k - 3];
      float to = k < 3 ? corners.get(b)[k] : places.get(b)[k - 3];
      mixed[k] = (float) (from + (to - from) * part);
    }
    return mixed;
  }

  /** A view of its own of the one mesh. */
  MeshView view() {
    MeshView view = new MeshView(mesh());
    view.setCullFace(CullFace.BACK);
    return view;
  }

  /** What JavaFX draws; made once, and no triangle may be added after that. */
  TriangleMesh mesh() {
    if (mesh == null) {
      mesh = made();
    }
    return mesh;
  }

  private TriangleMesh made() {
    TriangleMesh made = new TriangleMesh();
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
    made.getPoints().setAll(points);
    made.getTexCoords().setAll(pictures);
    made.getFaces().setAll(faces);
    // Group 0 means that no edge is smoothed over: boards have arrises.
    made.getFaceSmoothingGroups().setAll(new int[n / 3]);
    return made;
  }
}
