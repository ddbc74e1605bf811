package sawstead.preview.scene;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import sawstead.joinery.Fastener;
import sawstead.solid.Mesh;
import sawstead.solid.Panel;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Part;

/** One body of the station in the scene. Its meshes are in the body's local frame. */
final class PartShape {
  private final Part part;
  private final Stuff stuff;
  private final Materials materials;
  private final Group node = new Group();
  private final Affine affine = new Affine();
  private final MeshView face;
  private final MeshView edge;

  PartShape(Part part, List<Fastener> heads, Materials materials) {
    this.part = part;
    this.materials = materials;
    stuff = Stuff.of(part);
    Mesh mesh = part.body().solid().mesh();
    Sides sides = new Sides(part, mesh);
    face = sides.faces();
    edge = sides.edges();
    node.getChildren().addAll(face, edge);
    if (stuff != Stuff.CLEAR) {
      MeshView lines = Arrises.of(mesh).view();
      lines.setMaterial(materials.line());
      lines.setMouseTransparent(true);
      node.getChildren().add(lines);
    }
    Triangles screws = Heads.of(heads, part.body().placement().inverse());
    if (!screws.isEmpty()) {
      MeshView view = screws.view();
      view.setMaterial(materials.of(Stuff.STEEL, false, Glow.NONE));
      view.setMouseTransparent(true);
      node.getChildren().add(view);
    }
    node.getTransforms().add(affine);
    node.setUserData(part.id());
    place(Placement.identity());
    light(Glow.NONE, false);
  }

  Group node() {
    return node;
  }

  Part part() {
    return part;
  }

  /** Drawn after what can be seen through it. */
  boolean isClear() {
    return stuff == Stuff.CLEAR;
  }

  /** Moves the body from where the station has it. */
  void place(Placement by) {
    Placement at = by.after(part.body().placement());
    Vec u = at.u();
    Vec v = at.v();
    Vec w = at.w();
    Vec o = at.origin();
    affine.setToTransform(
        u.x(), v.x(), w.x(), o.x(), u.y(), v.y(), w.y(), o.y(), u.z(), v.z(), w.z(), o.z());
  }

  void light(Glow glow, boolean seeThrough) {
    if (stuff == Stuff.WOOD && part.body().solid() instanceof Panel panel) {
      face.setMaterial(materials.face(glow));
      edge.setMaterial(materials.edge(panel.thickness(), glow));
    } else {
      face.setMaterial(materials.of(stuff, seeThrough, glow));
      edge.setMaterial(materials.of(stuff, seeThrough, glow));
    }
  }
}
