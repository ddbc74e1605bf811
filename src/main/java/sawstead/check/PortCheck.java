package sawstead.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sawstead.brief.PortUse;
import sawstead.brief.PortWish;
import sawstead.joinery.Board;
import sawstead.solid.Body;
import sawstead.solid.Bore;
import sawstead.solid.Feature;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * What is meant to pass a port passes it.
 *
 * <ul>
 *   <li>{@code port-narrow} (stop): a port that the user asks for is narrower than the cuff or the
 *       diagonal of the plug that it is for;
 *   <li>{@code port-blocked} (stop): something stands within {@link #FREE} of either end of a hole
 *       of at least {@link #SMALLEST}. Holes in the user's own panels are not judged: they may be
 *       meant to be closed.
 * </ul>
 *
 * Heuristic: a straight column before and behind the hole, as wide as the hole.
 */
final class PortCheck implements Check {
  /** Free room before and behind a port for a hose or a plug to enter, mm (common practice). */
  static final double FREE = 15;

  /** Smaller holes are for bolts, pulls and pins, mm. */
  static final double SMALLEST = 20;

  private static final Set<String> PASSING = Set.of("vac/hose", "saw/dust-port");

  @Override
  public Outcome judge(Scene scene) {
    Outcome.Notes notes = new Outcome.Notes();
    scene
        .brief()
        .station()
        .ifPresent(wish -> wish.ports().forEach(port -> judgeWidth(scene, port, notes)));
    for (Board board : scene.station().boards().values()) {
      boolean own = scene.brief().extras().stream().anyMatch(e -> e.id().equals(board.id()));
      for (Feature feature : own ? List.<Feature>of() : board.features()) {
        if (feature instanceof Bore bore && bore.through() && bore.diameter() >= SMALLEST) {
          judgeRoom(scene, board, bore, notes);
        }
      }
    }
    return notes.outcome();
  }

  private static void judgeWidth(Scene scene, PortWish port, Outcome.Notes notes) {
    Optional<Double> needs = needs(scene, port);
    if (needs.isEmpty() || port.diameter().isEmpty()) {
      return;
    }
    double has = port.diameter().get().nominal();
    String what = port.use() == PortUse.HOSE ? "the hose's cuff" : "the plug";
    notes.add(
        Margin.length(
            "port-" + port.id(),
            "port " + port.id() + " round " + what,
            port.through(),
            has,
            needs.get()));
    if (has < needs.get()) {
      notes.add(
          Finding.stop(
              "port-narrow",
              port.through(),
              new Vec(port.x(), port.y(), port.z()),
              "port %s is %s wide, and %s needs %s"
                  .formatted(
                      port.id(),
                      scene.words().length(has),
                      what,
                      scene.words().length(needs.get())),
              "leave its diameter out, and the next hole saw at hand is taken; or cut a notch to an"
                  + " edge"));
    }
  }

  /** The widest that must pass, at the worst of its band. */
  private static Optional<Double> needs(Scene scene, PortWish port) {
    return switch (port.use()) {
      case HOSE -> scene.brief().vac().map(v -> v.hose().cuff().high());
      case PLUG -> scene.brief().saw().map(s -> s.cord().plug().high());
      case FREE -> Optional.empty();
    };
  }

  private static void judgeRoom(Scene scene, Board board, Bore bore, Outcome.Notes notes) {
    Placement p = board.placement();
    Vec start = p.apply(new Vec(bore.u(), bore.v(), -FREE));
    Body column =
        new Body(
            board.id(),
            Solids.cylinder(bore.diameter(), board.thickness() + 2 * FREE),
            new Placement(p.u(), p.v(), p.w(), start));
    for (Body other : scene.bodies()) {
      if (other.id().equals(board.id())
          || PASSING.contains(other.id())
          || !other.box().overlaps(column.box(), 0)) {
        continue;
      }
      Overlap.between(column, other)
          .filter(o -> o.depth() > scene.contact())
          .ifPresent(
              o ->
                  notes.add(
                      Finding.stop(
                          "port-blocked",
                          List.of(board.id(), other.id()),
                          o.centroid(),
                          other.id()
                              + " stands in the hole of "
                              + scene.words().length(bore.diameter())
                              + " in "
                              + board.id(),
                          "move the port, or what stands there, by "
                              + scene.words().length(o.depth()))));
    }
  }
}
