package sawstead.solid;

import java.util.List;

/**
 * A thing with a volume, in its own local frame, mm. Equal values are equal solids; their geometry
 * is worked out once per value, when first asked for.
 *
 * <p>Every geometric question throws {@link SolidException} if the features leave no material.
 */
public sealed interface Solid permits Panel, Stack {
  /** Volume of the mesh that is written, arcs as polygons, mm3. */
  default double volume() {
    return Shape.of(this).volume();
  }

  /**
   * Volume with true arcs, mm3: the volume of the mesh plus, for each edge that stands for a part
   * of an arc, the area between the two. Exact where no other linework cuts an arc; where it does,
   * good to {@link Outline#ARC_ERROR} squared, in mm2, per cut and mm of height.
   */
  default double volumeExact() {
    return Shape.of(this).volumeExact();
  }

  /** Centroid of the mesh that is written, mm. */
  default Vec centroid() {
    return Shape.of(this).centroid();
  }

  /** Closed triangle mesh, outward. */
  default Mesh mesh() {
    return Shape.of(this).mesh();
  }

  /** Disjoint convex pieces that make up the mesh's volume. */
  default List<Piece> partition() {
    return Shape.of(this).partition();
  }

  /** Few large convex pieces, overlapping one another, whose union is the solid to 2^-18 mm. */
  default List<Piece> cover() {
    return Shape.of(this).cover();
  }

  /** A convex prism around the solid: the hull of its plan over its whole height. */
  default Piece hull() {
    return Shape.of(this).hull();
  }

  /** The least axis-parallel box around the mesh, mm. */
  default Box box() {
    return Shape.of(this).box();
  }

  /** Operations that drawings show but the solid still contains as material, each word once. */
  List<String> uncut();

  /** Material and cuts square to the faces. */
  List<Prism> prisms();

  /** Flat cuts, applied last. */
  List<Plane> planes();
}
