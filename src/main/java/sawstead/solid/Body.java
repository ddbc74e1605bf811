package sawstead.solid;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * A solid at its place in the station: a panel, a saw, a vac, a board on its way, a wall. Its
 * pieces in the station's frame are worked out once, when first asked for.
 */
public final class Body {
  private final String id;
  private final Solid solid;
  private final Placement placement;
  private volatile Shape shape;
  private volatile Piece[] filled;
  private volatile Piece[] cover;
  private volatile Piece[] partition;

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
    return boxAround(Arrays.asList(partition()));
  }

  /** True if the point lies in the solid or within 2^-18 mm of it. */
  public boolean contains(Vec point) {
    return contains(point, Cover.SLACK);
  }

  boolean contains(Vec point, double margin) {
    for (Piece piece : cover()) {
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
    return boxAround(Arrays.asList(filled()));
  }

  /** True if some round hole of it is filled in {@link #filled()}. */
  boolean hasRoundHoles() {
    return shape().hasRoundHoles();
  }

  /** Cover of the solid with its round holes filled. */
  Piece[] filled() {
    if (filled == null) {
      filled = placed(shape().filledCover());
    }
    return filled;
  }

  /** Cover of the solid. */
  Piece[] cover() {
    if (cover == null) {
      cover = hasRoundHoles() ? placed(shape().cover()) : filled();
    }
    return cover;
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
