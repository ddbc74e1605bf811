package sawstead.preview.scene;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Material;
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
  private final Triangles faces;
  private final Triangles edges;
  private final Triangles lines;
  private final Triangles heads;
  private final double thickness;
  private MeshView face;
  private MeshView edge;
  private Placement at;
  private Section section = Section.NONE;
  private Glow glow = Glow.NONE;
  private boolean seeThrough;

  PartShape(Part part, List<Fastener> screws, Materials materials) {
    this.part = part;
    this.materials = materials;
    stuff = Stuff.of(part);
    Mesh mesh = part.body().solid().mesh();
    Sides sides = new Sides(part, mesh);
    faces = sides.faces();
    edges = sides.edges();
    lines = stuff == Stuff.CLEAR ? new Triangles() : Arrises.of(mesh);
    heads = Heads.of(screws, part.body().placement().inverse());
    thickness =
        part.body().solid() instanceof Panel panel ? panel.thickness() : mesh.box().size().z();
    node.getTransforms().add(affine);
    node.setUserData(part.id());
    place(Placement.identity());
    draw();
  }

  /** Shows the body whole, or what a section leaves of it and the face that it leaves. */
  private void draw() {
    node.getChildren().clear();
    Section.Half half = section.axis().isPresent() ? section.in(at) : null;
    face = add(faces, half);
    edge = add(edges, half);
    quiet(add(lines, half), materials.line());
    quiet(add(heads, half), materials.of(Stuff.STEEL, false, Glow.NONE));
    if (half != null) {
      MeshView cut = Cut.of(part.body().solid(), half, thickness).view();
      cut.setMaterial(
          stuff == Stuff.WOOD
              ? materials.edge(thickness, Glow.NONE)
              : materials.of(stuff, false, Glow.NONE));
      node.getChildren().add(cut);
    }
    dress();
  }

  private MeshView add(Triangles triangles, Section.Half half) {
    MeshView view = (half == null ? triangles : triangles.within(half)).view();
    node.getChildren().add(view);
    return view;
  }

  private static void quiet(MeshView view, Material material) {
    view.setMaterial(material);
    view.setMouseTransparent(true);
  }

  /** Cuts the body open where it now is. */
  void cut(Section wanted) {
    if (!wanted.equals(section) || wanted.axis().isPresent()) {
      section = wanted;
      draw();
    }
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
    at = by.after(part.body().placement());
    Vec u = at.u();
    Vec v = at.v();
    Vec w = at.w();
    Vec o = at.origin();
    affine.setToTransform(
        u.x(), v.x(), w.x(), o.x(), u.y(), v.y(), w.y(), o.y(), u.z(), v.z(), w.z(), o.z());
  }

  void light(Glow wanted, boolean clear) {
    glow = wanted;
    seeThrough = clear;
    dress();
  }

  private void dress() {
    boolean wood = stuff == Stuff.WOOD;
    face.setMaterial(wood ? materials.face(glow) : materials.of(stuff, seeThrough, glow));
    edge.setMaterial(
        wood ? materials.edge(thickness, glow) : materials.of(stuff, seeThrough, glow));
  }
}
