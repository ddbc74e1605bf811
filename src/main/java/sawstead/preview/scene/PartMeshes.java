package sawstead.preview.scene;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.solid.Mesh;
import sawstead.solid.Panel;
import sawstead.station.Part;

/**
 * What one body looks like, in its own frame. Made away from the window's thread; a body that only
 * stands elsewhere than before keeps its triangles, and the graphics card keeps them, too.
 *
 * @param part the body, where the station has it
 * @param screws those whose heads are seen on it
 * @param stuff what it is made of
 * @param thickness of its sheet, or its extent along its own z, mm
 */
record PartMeshes(
    Part part,
    List<Fastener> screws,
    Stuff stuff,
    double thickness,
    Triangles faces,
    Triangles edges,
    Triangles lines,
    Triangles heads) {

  /** Those of a body; what looks as it did before is taken over. */
  static PartMeshes of(Part part, List<Fastener> screws, Optional<PartMeshes> before) {
    Stuff stuff = Stuff.of(part);
    Optional<PartMeshes> same =
        before.filter(b -> b.stuff == stuff && b.part.id().equals(part.id()) && b.isShaped(part));
    if (same.isPresent()) {
      PartMeshes kept = same.get();
      Triangles heads = kept.hasHeads(part, screws) ? kept.heads : heads(part, screws);
      return new PartMeshes(
          part, screws, stuff, kept.thickness, kept.faces, kept.edges, kept.lines, heads);
    }
    Mesh mesh = part.body().solid().mesh();
    Sides sides = new Sides(part, mesh);
    double thickness =
        part.body().solid() instanceof Panel panel ? panel.thickness() : mesh.box().size().z();
    Triangles lines = stuff == Stuff.CLEAR ? new Triangles() : Arrises.of(mesh);
    for (Triangles made : List.of(sides.faces(), sides.edges(), lines)) {
      made.mesh();
    }
    return new PartMeshes(
        part, screws, stuff, thickness, sides.faces(), sides.edges(), lines, heads(part, screws));
  }

  private boolean isShaped(Part other) {
    return part.body().solid().equals(other.body().solid());
  }

  private boolean hasHeads(Part other, List<Fastener> those) {
    return those.isEmpty() && screws.isEmpty()
        || those.equals(screws) && other.body().placement().equals(part.body().placement());
  }

  private static Triangles heads(Part part, List<Fastener> screws) {
    Triangles heads = Heads.of(screws, part.body().placement().inverse());
    heads.mesh();
    return heads;
  }

  /** Whether both show the same triangles in the same material. */
  boolean looksLike(PartMeshes other) {
    return Objects.equals(stuff, other.stuff)
        && faces == other.faces
        && edges == other.edges
        && lines == other.lines
        && heads == other.heads;
  }
}
