package sawstead.joinery;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Bevel;
import sawstead.solid.Bore;
import sawstead.solid.EdgeBore;
import sawstead.solid.Face;
import sawstead.solid.Feature;
import sawstead.solid.Mark;
import sawstead.solid.Opening;
import sawstead.solid.PocketBore;
import sawstead.solid.Recess;

/**
 * A feature with the air that it leaves.
 *
 * @param feature of a board
 * @param air in that board's local frame
 */
record FeatureAir(Feature feature, Air air) {

  /** All features of a board that take material, in their order. */
  static List<FeatureAir> of(Board board) {
    return board.features().stream()
        .flatMap(f -> air(f, board).map(a -> new FeatureAir(f, a)).stream())
        .toList();
  }

  private static Optional<Air> air(Feature feature, Board board) {
    double t = board.thickness();
    if (feature instanceof Opening o) {
      return Optional.of(new PrismAir(o.outline(), 0, t));
    }
    if (feature instanceof Recess r) {
      boolean front = r.face() == Face.FRONT;
      return Optional.of(
          new PrismAir(r.outline(), front ? t - r.depth() : 0, front ? t : r.depth()));
    }
    if (feature instanceof Bore b) {
      double depth = b.through() ? t : b.depth();
      boolean front = b.face() == Face.FRONT;
      return Optional.of(new PrismAir(b.outline(), front ? t - depth : 0, front ? t : depth));
    }
    if (feature instanceof Bevel b) {
      return Optional.of(new BevelAir(b, board));
    }
    if (feature instanceof EdgeBore b) {
      return Optional.of(RodAir.bored(b.at(), b.direction(), b.diameter(), b.depth()));
    }
    if (feature instanceof PocketBore b) {
      return Optional.of(RodAir.bored(b.at(), b.direction(), b.diameter(), b.depth()));
    }
    if (feature instanceof Mark) {
      return Optional.empty();
    }
    throw new IllegalStateException("no air is known for " + feature);
  }
}
