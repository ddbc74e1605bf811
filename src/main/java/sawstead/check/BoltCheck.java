package sawstead.check;

import java.util.List;
import java.util.Optional;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Body;
import sawstead.solid.Chord;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * Washer, nut and a socket have room at the far end of every bolt: {@code bolt-blocked} (stop).
 * Whether the bolt itself meets something is for {@link ScrewPathCheck}.
 *
 * <p>Heuristic: a column as wide as the washer and {@link #REACH} long.
 */
final class BoltCheck implements Check {
  /** Room below a nut for a socket, mm (common practice, no source). */
  static final double REACH = 30;

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    for (Fastener bolt : scene.station().fasteners()) {
      if (bolt.kind() == FastenerKind.BOLT) {
        column(scene, bolt).ifPresent(c -> judge(scene, bolt, c, notes));
      }
    }
    return notes.outcome();
  }

  /** The room that washer, nut and socket take beyond the last part. */
  private static Optional<Body> column(Scene scene, Fastener bolt) {
    Optional<Body> last =
        bolt.joins().stream().flatMap(id -> scene.body(id).stream()).reduce((a, b) -> b);
    if (last.isEmpty()) {
      return Optional.empty();
    }
    // Beside the bolt, for the bolt's own line runs in the air of its bore.
    Vec axis = bolt.axis();
    Vec aside = Math.abs(axis.x()) < 0.5 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = aside.minus(axis.scale(aside.dot(axis))).unit();
    double radius = Math.max(bolt.headDiameter(), bolt.diameter()) / 2;
    double exit =
        Chord.along(last.get(), bolt.at().plus(u.scale(radius)), axis).stream()
            .mapToDouble(Chord::to)
            .max()
            .orElse(bolt.length());
    Vec at = bolt.at().plus(axis.scale(exit));
    return Optional.of(
        new Body(
            bolt.id(),
            Solids.cylinder(2 * radius, REACH),
            new Placement(u, axis.cross(u), axis, at)));
  }

  private static void judge(Scene scene, Fastener bolt, Body column, Outcome.Notes notes) {
    for (Body other : scene.bodies()) {
      if (bolt.joins().contains(other.id()) || !other.box().overlaps(column.box(), 0)) {
        continue;
      }
      Overlap.between(column, other)
          .filter(o -> o.depth() > scene.contact())
          .ifPresent(
              o ->
                  notes.add(
                      Finding.stop(
                          "bolt-blocked",
                          List.of(bolt.id(), other.id()),
                          o.centroid(),
                          other.id() + " is in the way of the nut of " + bolt.id(),
                          "make the stand wider or narrower, so that its legs and stretchers stand"
                              + " clear of the saw's bolt holes")));
    }
  }
}
