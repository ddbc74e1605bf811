package sawstead.solid;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * A solid at its place in the station: a panel, a saw, a vac, a board on its way, a wall. Its
 * pieces in the station's frame are worked out once, when first asked for.
 */
public final class Body {
  /** Covers kept for one body, each with other holes open. */
  private static final int COVERS_KEPT = 8;

  private final String id;
  private final Solid solid;
  private final Placement placement;
  private volatile Shape shape;
  private volatile Piece[] filled;
  private volatile Piece[] partition;
  private volatile Piece[] roundHoles;
  private volatile Box box;
  private volatile Box reach;
  private final Map<BitSet, Piece[]> covers = new LastUsed<>(COVERS_KEPT);

  /**
   * A solid, named and placed.
   *
   * @param id path such as {@code stand/leg-3-face}
   * @param solid in its local frame
   * @param placement from the local frame to the station's
   */
  public Body(String id, Solid solid, Placement placement) {
    this.id = Objects.requireNonNull(id, "id");
    this.solid = Objects.requireNonNull(solid, "solid");
    this.placement = Objects.requireNonNull(placement, "placement");
  }

  /** Path that names it in the station. */
  public String id() {
    return id;
  }

  /** Shape in its local frame. */
  public Solid solid() {
    return solid;
  }

  /** Motion from the local frame to the station's. */
  public Placement placement() {
    return placement;
  }

  /** The same body after a further motion in the station's frame. */
  public Body moved(Placement by) {
    return new Body(id, solid, by.after(placement));
  }

  /** Volume of the mesh, mm3. */
  public double volume() {
    return solid.volume();
  }

  /** Centroid in the station's frame, mm. */
  public Vec centroid() {
    return placement.apply(solid.centroid());
  }

  /** The least station box around the mesh, mm. */
  public Box box() {
    if (box == null) {
      box = boxAround(Arrays.asList(partition()));
    }
    return box;
  }

  /** True if the point lies in the solid or within 2^-18 mm of it. */
  public boolean contains(Vec point) {
    return contains(point, Cover.SLACK);
  }

  boolean contains(Vec point, double margin) {
    for (Piece piece : cover(hole -> hole.contains(point, 1))) {
      if (piece.contains(point, margin)) {
        return true;
      }
    }
    return false;
  }

  /** The mesh in the station's frame. */
  public Mesh mesh() {
    return solid.mesh().placed(placement);
  }

  /** A station box that holds the body with its round holes filled; quicker to have than a box. */
  Box reach() {
    if (reach == null) {
      reach = boxAround(Arrays.asList(filled()));
    }
    return reach;
  }

  /**
   * The round holes that are wanted.
   *
   * @param wanted asked of a box that turns with the body and holds the hole
   */
  BitSet holes(Predicate<Piece> wanted) {
    if (roundHoles == null) {
      roundHoles = placed(shape().roundHoles());
    }
    BitSet holes = new BitSet();
    for (int i = 0; i < roundHoles.length; i++) {
      holes.set(i, wanted.test(roundHoles[i]));
    }
    return holes;
  }

  /** True if the piece shares more than a touch with the body, its round holes filled. */
  boolean isMetBy(Piece piece) {
    for (Piece own : filled()) {
      if (Penetration.boxesOverlap(own, piece, 0)
          && Penetration.depth(own, piece, Overlap.TOUCH) > Overlap.TOUCH) {
        return true;
      }
    }
    return false;
  }

  /** Cover of the solid with its round holes filled. */
  Piece[] filled() {
    if (filled == null) {
      filled = placed(shape().cover(new BitSet()));
    }
    return filled;
  }

  /** Cover of the solid with those round holes open that are wanted. */
  Piece[] cover(Predicate<Piece> wanted) {
    return cover(holes(wanted));
  }

  /** Cover of the solid with some round holes open and the others filled. */
  Piece[] cover(BitSet open) {
    if (open.isEmpty()) {
      return filled();
    }
    synchronized (covers) {
      Piece[] known = covers.get(open);
      if (known == null) {
        known = placed(shape().cover(open));
        covers.put((BitSet) open.clone(), known);
      }
      return known;
    }
  }

  /** Disjoint pieces of the solid. */
  Piece[] partition() {
    if (partition == null) {
      partition = placed(shape().partition());
    }
    return partition;
  }

  /** Kept here as well as among all shapes, where finding it takes a comparison of values. */
  private Shape shape() {
    if (shape == null) {
      shape = Shape.of(solid);
    }
    return shape;
  }

  private Piece[] placed(List<Piece> pieces) {
    return pieces.stream().map(p -> p.placed(placement)).toArray(Piece[]::new);
  }

  static Box boxAround(List<Piece> pieces) {
    double[] b = pieces.get(0).box.clone();
    for (Piece piece : pieces) {
      for (int k = 0; k < 3; k++) {
        b[k] = Math.min(b[k], piece.box[k]);
        b[3 + k] = Math.max(b[3 + k], piece.box[3 + k]);
      }
    }
    return new Box(new Vec(b[0], b[1], b[2]), new Vec(b[3], b[4], b[5]));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Body b
        && id.equals(b.id)
        && placement.equals(b.placement)
        && solid.equals(b.solid);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, placement);
  }

  @Override
  public String toString() {
    return "Body[" + id + "]";
  }
}
