package sawstead.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import sawstead.solid.Body;
import sawstead.solid.Motion;
import sawstead.solid.Overlap;
import sawstead.solid.Placement;
import sawstead.solid.Turn;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Situation;
import sawstead.station.Station;

/**
 * The least change that lets a blocked motion through: the unit in the way set lower or aside, or
 * the axis of a hinge set elsewhere. Found by halving on the certified sweep against the unit in
 * the way; what is returned was swept among everything and is clear.
 *
 * <p>Heuristic in that it looks along the axes only and takes for granted that a larger shift the
 * same way is no worse.
 */
final class Clearing {
  /** Furthest shift that is tried, mm. */
  private static final double FURTHEST = 160;

  /** To how much a shift is told, mm. */
  private static final double FINE = 0.02;

  private static final Set<String> UNITS =
      Set.of("wing-left", "wing-right", "outfeed", "stand", "tray");

  private static final List<Way> WAYS =
      List.of(Way.DOWN, Way.UP, Way.LEFT, Way.RIGHT, Way.FRONT, Way.REAR);

  private final Situation situation;
  private final Passage passage;
  private final double contact;
  private final String unit;

  /**
   * A change.
   *
   * @param hinge whether the axis is moved, else the unit in the way
   * @param unit whose bodies are in the way
   * @param way which way
   * @param by how far, mm
   */
  record Shift(boolean hinge, String unit, Way way, double by) {}

  private Clearing(Station station, Passage passage, double contact) {
    this.passage = passage;
    this.contact = contact;
    situation = Situation.of(station, passage.mover());
    unit = unitOf(passage.firstContact().orElseThrow().with());
  }

  /** The least shift that clears a blocked motion; empty if none was found. */
  static Optional<Shift> of(Station station, Passage passage, double contact) {
    return new Clearing(station, passage, contact).least();
  }

  /** A unit moves as a whole; panels of the user's own move alone. */
  private static String unitOf(String id) {
    String first = Part.unit(id);
    return UNITS.contains(first) ? first : id;
  }

  private boolean inUnit(Body body) {
    return body.id().equals(unit) || body.id().startsWith(unit + "/");
  }

  private Optional<Shift> least() {
    Optional<Shift> best = Optional.empty();
    boolean hinged = passage.mover().id().startsWith("outfeed/l");
    boolean own = situation.moved().stream().anyMatch(this::inUnit);
    // What is fixed to the stand goes lower more easily than aside.
    List<Way> ways = UNITS.contains(unit) ? List.of(Way.DOWN) : WAYS;
    for (Way way : WAYS) {
      if (ways.contains(way) && !own && !unit.equals("saw/table")) {
        Optional<Shift> found =
            search(by -> swept(passage.mover().motion(), way, by, false), best)
                .filter(by -> swept(passage.mover().motion(), way, by, true))
                .filter(by -> fits(way, by))
                .map(by -> new Shift(false, unit, way, by));
        best = found.isPresent() ? found : best;
      }
      if (hinged && passage.mover().motion() instanceof Turn turn) {
        Optional<Shift> found =
            search(by -> swept(moved(turn, way, by), way, 0, false), best)
                .filter(by -> swept(moved(turn, way, by), way, 0, true))
                .map(by -> new Shift(true, unit, way, by));
        best = found.isPresent() ? found : best;
      }
    }
    return best;
  }

  private static Motion moved(Turn turn, Way way, double by) {
    Vec at = turn.at().plus(way.direction().scale(by));
    return new Turn(at, turn.direction(), turn.from(), turn.to(), turn.rest());
  }

  /**
   * The least shift up to {@link #FURTHEST} that clears, to {@link #FINE}, on the clear side; none
   * if it is not less than the best by now, which is not looked into further.
   */
  private static Optional<Double> search(DoublePredicate clears, Optional<Shift> best) {
    double limit = best.map(Shift::by).orElse(Double.POSITIVE_INFINITY);
    double high = 1;
    while (!clears.test(high)) {
      high *= 2;
      if (high > FURTHEST || high / 2 >= limit) {
        return Optional.empty();
      }
    }
    double low = high == 1 ? 0 : high / 2;
    while (high - low > FINE && low < limit) {
      double middle = (low + high) / 2;
      if (clears.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high < limit ? Optional.of(high) : Optional.empty();
  }

  /** Whether the unit, shifted, goes into nothing that it is not in already. */
  private boolean fits(Way way, double by) {
    Placement shift = Placement.at(way.direction().scale(by));
    List<Body> others = new ArrayList<>(situation.moved());
    situation.standing().stream().filter(b -> !inUnit(b)).forEach(others::add);
    return situation.standing().stream()
        .filter(this::inUnit)
        .map(b -> b.moved(shift))
        .noneMatch(
            b ->
                others.stream()
                    .anyMatch(
                        o -> Overlap.between(b, o).filter(l -> l.depth() > contact).isPresent()));
  }

  /** Whether the motion is clear of the unit, or of everything, with the unit shifted. */
  private boolean swept(Motion motion, Way way, double by, boolean everything) {
    Placement shift = Placement.at(way.direction().scale(by));
    List<Body> obstacles = new ArrayList<>();
    for (Body body : situation.standing()) {
      if (inUnit(body)) {
        obstacles.add(body.moved(shift));
      } else if (everything) {
        obstacles.add(body);
      }
    }
    return Passages.sweep(motion, situation.moved(), obstacles, passage.mover().contacts(), contact)
        .firstContact()
        .isEmpty();
  }
}
