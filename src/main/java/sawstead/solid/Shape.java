package sawstead.solid;

import java.util.List;

abstract class Shape {
  static Shape of(Solid solid) {
    throw new UnsupportedOperationException("the slab engine lands with the next commit");
  }

  abstract double volume();

  abstract double volumeExact();

  abstract Vec centroid();

  abstract Mesh mesh();

  abstract List<Piece> partition();

  abstract List<Piece> cover();

  abstract List<Piece> filledCover();

  abstract Piece hull();

  abstract Box box();

  abstract boolean hasRoundHoles();
}
