package sawstead.preview.scene;

import javafx.scene.Group;
import javafx.scene.paint.Material;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Part;

/** One body of the station in the scene. Its meshes are in the body's local frame. */
final class PartShape {
  private final Materials materials;
  private final Group node = new Group();
  private final Affine affine = new Affine();
  private final MeshView face = new MeshView();
  private final MeshView edge = new MeshView();
  private final MeshView lines = new MeshView();
  private final MeshView heads = new MeshView();
  private PartMeshes meshes;
  private Placement at;
  private Section section = Section.NONE;
  private Glow glow = Glow.NONE;
  private boolean seeThrough;

  PartShape(PartMeshes meshes, Materials materials) {
    this.meshes = meshes;
    this.materials = materials;
    for (MeshView view : new MeshView[] {face, edge, lines, heads}) {
      view.setCullFace(CullFace.BACK);
    }
    quiet(lines, materials.line());
    quiet(heads, materials.of(Stuff.STEEL, false, Glow.NONE));
    node.getTransforms().add(affine);
    node.setUserData(part().id());
    place(Placement.identity());
    draw();
  }

  /** Shows what the body has become; it is not placed anew by that. */
  void become(PartMeshes next) {
    boolean same = next.looksLike(meshes);
    meshes = next;
    if (!same) {
      draw();
    }
  }

  /** Shows the body whole, or what a section leaves of it and the face that it leaves. */
  private void draw() {
    node.getChildren().setAll(face, edge, lines, heads);
    Section.Half half = section.axis().isPresent() ? section.in(at) : null;
    show(face, meshes.faces(), half);
    show(edge, meshes.edges(), half);
    show(lines, meshes.lines(), half);
    show(heads, meshes.heads(), half);
    if (half != null) {
      MeshView cut = Cut.of(part().body().solid(), half, meshes.thickness()).view();
      cut.setMaterial(
          meshes.stuff() == Stuff.WOOD
              ? materials.edge(meshes.thickness(), Glow.NONE)
              : materials.of(meshes.stuff(), false, Glow.NONE));
      node.getChildren().add(cut);
    }
    dress();
  }

  private static void show(MeshView view, Triangles triangles, Section.Half half) {
    view.setMesh((half == null ? triangles : triangles.within(half)).mesh());
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
    return meshes.part();
  }

  PartMeshes meshes() {
    return meshes;
  }

  /** Drawn after what can be seen through it. */
  boolean isClear() {
    return meshes.stuff() == Stuff.CLEAR;
  }

  /** Moves the body from where the station has it. */
  void place(Placement by) {
    Placement wanted = by.after(part().body().placement());
    if (wanted.equals(at)) {
      return;
    }
    at = wanted;
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
    Stuff stuff = meshes.stuff();
    boolean wood = stuff == Stuff.WOOD;
    face.setMaterial(wood ? materials.face(glow) : materials.of(stuff, seeThrough, glow));
    edge.setMaterial(
        wood ? materials.edge(meshes.thickness(), glow) : materials.of(stuff, seeThrough, glow));
  }
}
