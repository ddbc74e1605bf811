package sawstead.preview.scene;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Vec;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.Station;
import sawstead.station.Step;

/**
 * What of a station is open, spread or built so far. Says where each body then is.
 *
 * @param movers parameter of each mover that is not at rest, by id: mm or degrees
 * @param spread 0 together, 1 spread wide along the directions in which parts come
 * @param built steps done, the last of them perhaps in part: 3.4 is three steps done and the fourth
 *     40 % on its way; {@link #ALL} when everything stands
 */
public record Arrangement(Map<String, Double> movers, double spread, double built) {
  /** Everything is built. */
  public static final double ALL = Double.POSITIVE_INFINITY;

  /** Everything built, shut and together. */
  public static final Arrangement REST = new Arrangement(Map.of(), 0, ALL);

  /** How far a part comes from, mm. */
  private static final double WAY = 450;

  private static final double SPREAD_WAY = 260;
  private static final double SPREAD_SHARE = 0.4;

  /** Takes a copy of the map. */
  public Arrangement {
    movers = Map.copyOf(movers);
  }

  /** The same with one mover elsewhere. */
  public Arrangement moving(String mover, double parameter) {
    Map<String, Double> more = new TreeMap<>(movers);
    more.put(mover, parameter);
    return new Arrangement(more, spread, built);
  }

  /** The same, spread otherwise. */
  public Arrangement spread(double share) {
    return new Arrangement(movers, share, built);
  }

  /** The same, built so far. */
  public Arrangement built(double steps) {
    return new Arrangement(movers, spread, steps);
  }

  /** The motion of a part from where the station has it; empty while it is not there yet. */
  public Optional<Placement> of(Part part, Station station) {
    Optional<Step> step = stepOf(part.id(), station);
    Placement by = Placement.identity();
    for (Mover mover : station.movers()) {
      Double parameter = movers.get(mover.id());
      if (parameter != null && mover.moves().contains(part.id())) {
        by = mover.motion().at(parameter).after(by);
      }
    }
    if (step.isPresent() && built != ALL) {
      double done = built - (step.get().number() - 1);
      if (done <= 0) {
        return Optional.empty();
      }
      if (done < 1) {
        by = by.moved(step.get().direction().scale(-WAY * (1 - done)));
      }
    }
    return Optional.of(spread == 0 ? by : by.moved(apart(part, step, station)));
  }

  private Vec apart(Part part, Optional<Step> step, Station station) {
    Vec from = part.body().box().centre().minus(box(station).centre()).scale(SPREAD_SHARE);
    Vec along = step.map(s -> s.direction().scale(-SPREAD_WAY)).orElse(Vec.ZERO);
    return from.plus(along).scale(spread);
  }

  /**
   * The step that brings a body: the one that places it, or else the one that places its nearest of
   * kin, which is the body whose id shares the longest beginning with it, the unit at least. A
   * fence comes with its saw, a hinge with its lid.
   */
  public static Optional<Step> stepOf(String id, Station station) {
    Optional<Step> own = station.steps().stream().filter(s -> s.places().contains(id)).findFirst();
    if (own.isPresent()) {
      return own;
    }
    Step nearest = null;
    int most = id.indexOf('/');
    for (Step step : station.steps()) {
      for (String placed : step.places()) {
        int shared = shared(id, placed);
        if (shared > most && most > 0) {
          most = shared;
          nearest = step;
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  private static int shared(String a, String b) {
    int n = 0;
    while (n < Math.min(a.length(), b.length()) && a.charAt(n) == b.charAt(n)) {
      n++;
    }
    return n;
  }

  /** The box around everything at rest. */
  public static Box box(Station station) {
    return station.parts().values().stream()
        .map(p -> p.body().box())
        .reduce(Box::union)
        .orElse(new Box(new Vec(-500, -500, 0), new Vec(500, 500, 1000)));
  }
}
