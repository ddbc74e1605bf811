package sawstead.solid;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The geometry of a solid, each part worked out once, when first asked for. */
final class Shape {
  /** Shapes kept at hand; a large station has a few hundred different solids. */
  private static final int KEPT = 2048;

  private static final Map<Solid, Shape> SHAPES =
      Collections.synchronizedMap(
          new LinkedHashMap<>(64, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Solid, Shape> eldest) {
              return size() > KEPT;
            }
          });

  private final List<Prism> prisms;
  private final List<Prism> filledPrisms;
  private final List<Plane> planes;
  private Slabs slabs;
  private Slabs filledSlabs;
  private Mesh mesh;
  private List<Piece> partition;
  private List<Piece> cover;
  private List<Piece> filledCover;

  private Shape(Solid solid) {
    prisms = solid.prisms(true);
    filledPrisms = solid.prisms(false);
    planes = solid.planes();
  }

  /** The shape of a solid: one for all equal solids, as long as it is kept. */
  static Shape of(Solid solid) {
    return SHAPES.computeIfAbsent(solid, Shape::new);
  }

  boolean hasRoundHoles() {
    return prisms.size() != filledPrisms.size();
  }

  private synchronized Slabs slabs() {
    if (slabs == null) {
      slabs = Slabs.of(prisms);
    }
    return slabs;
  }

  private synchronized Slabs filledSlabs() {
    if (filledSlabs == null) {
      filledSlabs = hasRoundHoles() ? Slabs.of(filledPrisms) : slabs();
    }
    return filledSlabs;
  }

  double volume() {
    return planes.isEmpty() ? slabs().volume() : mesh().volume();
  }

  double volumeExact() {
    return volume() + slabs().arcVolume();
  }

  Vec centroid() {
    return planes.isEmpty() ? slabs().centroid() : mesh().centroid();
  }

  synchronized Mesh mesh() {
    if (mesh == null) {
      mesh = planes.isEmpty() ? SlabMesh.of(slabs()) : Complex.of(slabs()).cut(planes).mesh();
    }
    return mesh;
  }

  synchronized List<Piece> partition() {
    if (partition == null) {
      partition = cut(Partition.of(slabs()));
    }
    return partition;
  }

  synchronized List<Piece> cover() {
    if (cover == null) {
      cover = hasRoundHoles() ? cut(Cover.of(slabs())) : filledCover();
    }
    return cover;
  }

  synchronized List<Piece> filledCover() {
    if (filledCover == null) {
      filledCover = cut(Cover.of(filledSlabs()));
    }
    return filledCover;
  }

  Piece hull() {
    return PlanHull.of(slabs());
  }

  Box box() {
    return Body.boxAround(partition());
  }

  private List<Piece> cut(List<Piece> whole) {
    if (planes.isEmpty()) {
      return List.copyOf(whole);
    }
    Clipper clipper = new Clipper();
    List<Piece> kept =
        whole.stream().map(p -> clipper.cut(p, planes)).filter(p -> p != null).toList();
    if (kept.isEmpty()) {
      throw new SolidException("nothing is left of a panel: its bevels take away all of it");
    }
    return kept;
  }
}
