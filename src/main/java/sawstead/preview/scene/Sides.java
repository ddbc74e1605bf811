package sawstead.preview.scene;

import java.util.Random;
import sawstead.solid.Mesh;
import sawstead.solid.Panel;
import sawstead.solid.Vec;
import sawstead.station.Part;

/**
 * Parts the triangles of a body into those of its two faces and those of its edges, and says which
 * piece of the wood's picture each shows: grain along u on the faces, plies through w on the edges.
 * Where on the sheet a panel was cut from is drawn by lot from its id, so that no two look alike.
 */
final class Sides {
  /** A triangle whose normal has more than this along w belongs to a face. */
  private static final double FACE = 0.7;

  private final Triangles faces = new Triangles();
  private final Triangles edges = new Triangles();

  Sides(Part part, Mesh mesh) {
    Random lot = new Random(part.id().hashCode());
    double ds = lot.nextDouble();
    double dt = lot.nextDouble();
    double thickness =
        part.body().solid() instanceof Panel panel ? panel.thickness() : mesh.box().size().z();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec normal = mesh.normal(t);
      boolean face = Math.abs(normal.z()) > FACE;
      boolean alongU = Math.abs(normal.y()) > Math.abs(normal.x());
      for (int k = 0; k < 3; k++) {
        Vec p = mesh.vertex(mesh.corner(t, k));
        if (face) {
          faces.corner(p, ds + p.x() / Grain.FACE_LENGTH, dt + p.y() / Grain.FACE_WIDTH);
        } else {
          edges.corner(p, ds + (alongU ? p.x() : p.y()) / Grain.EDGE_LENGTH, p.z() / thickness);
        }
      }
    }
  }

  Triangles faces() {
    return faces;
  }

  Triangles edges() {
    return edges;
  }
}
