package sawstead.solid;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** The geometry of a solid, each part worked out once, when first asked for. */
final class Shape {
  /** Shapes kept at hand; a large station has a few hundred different solids. */
  private static final int KEPT = 2048;

  private static final Map<Solid, Shape> SHAPES = Collections.synchronizedMap(new LastUsed<>(KEPT));

  /** Covers kept for one shape, each with other holes open. */
  private static final int COVERS_KEPT = 32;

  private final List<Prism> prisms;
  private final List<Prism> roundHoles;
  private final List<Plane> planes;
  private final Map<BitSet, List<Piece>> covers = new LastUsed<>(COVERS_KEPT);
  private Slabs slabs;
  private Mesh mesh;
  private List<Piece> partition;

  private Shape(Solid solid) {
    prisms = solid.prisms();
    roundHoles = prisms.stream().filter(Prism::isRoundHole).toList();
    planes = solid.planes();
  }

  /** The shape of a solid: one for all equal solids, as long as it is kept. */
  static Shape of(Solid solid) {
    return SHAPES.computeIfAbsent(solid, Shape::new);
  }

  /** Boxes around the round holes; their order is that of {@link #cover(BitSet)}. */
  List<Piece> roundHoles() {
    return roundHoles.stream().map(Prism::box).toList();
  }

  private synchronized Slabs slabs() {
    if (slabs == null) {
      slabs = Slabs.of(prisms);
    }
    return slabs;
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

  /** The cover with all holes open. */
  List<Piece> cover() {
    BitSet all = new BitSet();
    all.set(0, roundHoles.size());
    return cover(all);
  }

  /** The cover with some round holes open and the others filled. */
  synchronized List<Piece> cover(BitSet open) {
    List<Piece> known = covers.get(open);
    if (known == null) {
      known = cut(Cover.of(slabs(open)));
      covers.put((BitSet) open.clone(), known);
    }
    return known;
  }

  private Slabs slabs(BitSet open) {
    if (open.cardinality() == roundHoles.size()) {
      return slabs();
    }
    List<Prism> some = new ArrayList<>(prisms);
    some.removeIf(Prism::isRoundHole);
    open.stream().mapToObj(roundHoles::get).forEach(some::add);
    return Slabs.of(some);
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
