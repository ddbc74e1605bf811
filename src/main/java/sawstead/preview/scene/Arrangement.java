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

/**
 * What of a station is open, spread or built so far. Says where each body then is.
 *
 * <p>A motion that has a setting of its own (a board being fed, a sled set on the table) is shown
 * in it as long as it is the last that was moved; then its setting goes, and its guests with it.
 *
 * @param movers parameter of each mover that is not at rest, by id: mm or degrees
 * @param last id of the mover that was moved last
 * @param spread 0 together, 1 spread wide along the directions in which parts come
 * @param built steps done, the last of them perhaps in part: 3.4 is three steps done and the fourth
 *     40 % on its way; {@link #ALL} when everything stands
 */
public record Arrangement(
    Map<String, Double> movers, Optional<String> last, double spread, double built) {
  /** Everything is built. */
  public static final double ALL = Double.POSITIVE_INFINITY;

  /** Everything built, shut and together. */
  public static final Arrangement REST = new Arrangement(Map.of(), Optional.empty(), 0, ALL);

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
    return new Arrangement(more, Optional.of(mover), spread, built);
  }

  /** The same, spread otherwise. */
  public Arrangement spread(double share) {
    return new Arrangement(movers, last, share, built);
  }

  /** The same, built so far. */
  public Arrangement built(double steps) {
    return new Arrangement(movers, last, spread, steps);
  }

  /**
   * The motion of a body from where the station (or, of a guest, its setting) has it; empty while
   * it is not there.
   */
  public Optional<Placement> of(Part part, Station station) {
    return of(part, station, BuildOrder.of(station));
  }

  /** The same where the station is built in another order than its units name. */
  Optional<Placement> of(Part part, Station station, BuildOrder order) {
    Optional<Mover> shown = last.flatMap(station::mover).filter(m -> movers.containsKey(m.id()));
    if (!station.parts().containsKey(part.id())) {
      return shown
          .filter(m -> m.setting().guests().contains(part))
          .map(m -> m.motion().at(movers.get(m.id())));
    }
    if (shown.isPresent() && shown.get().setting().aside().contains(part.id())) {
      return Optional.empty();
    }
    if (part.isRoom() && shown.filter(m -> concernsRoom(m)).isEmpty()) {
      return Optional.empty();
    }
    Optional<BuildOrder.Coming> step = order.bringing(part.id());
    Placement by = moved(part.id(), station, shown);
    if (step.isPresent() && built != ALL) {
      double done = built - (step.get().number() - 1);
      if (done <= 0) {
        return Optional.empty();
      }
      if (done < 1) {
        by = by.moved(step.get().away(done));
      }
    }
    return Optional.of(spread == 0 ? by : by.moved(apart(part, step, station)));
  }

  /**
   * By all that is moved; what the last mover's setting wants of others goes before their own. What
   * it sets elsewhere begins there, wherever it was moved before: the second leg of a way out.
   */
  private Placement moved(String id, Station station, Optional<Mover> shown) {
    Map<String, Double> all = new TreeMap<>();
    boolean begins =
        shown
            .filter(m -> m.moves().contains(id))
            .filter(m -> !m.setting().set().equals(Placement.identity()))
            .isPresent();
    for (Mover mover : station.movers()) {
      boolean stays = !begins || !mover.moves().contains(id);
      if (stays && movers.containsKey(mover.id()) && mover.setting().isPlain()) {
        all.put(mover.id(), movers.get(mover.id()));
      }
    }
    shown.ifPresent(m -> all.putAll(m.setting().others()));
    shown.ifPresent(m -> all.remove(m.id()));
    Placement by = Placement.identity();
    for (Map.Entry<String, Double> one : all.entrySet()) {
      by = after(by, station.mover(one.getKey()).orElseThrow(), one.getValue(), id);
    }
    return shown.isPresent() ? after(by, shown.get(), movers.get(shown.get().id()), id) : by;
  }

  /** Walls hide what stands between them, so they are only shown where a motion needs the room. */
  private static boolean concernsRoom(Mover mover) {
    return !mover.setting().guests().isEmpty() || mover.id().startsWith("room/");
  }

  private static Placement after(Placement by, Mover mover, double parameter, String id) {
    return mover.moves().contains(id)
        ? mover.motion().at(parameter).after(mover.setting().set()).after(by)
        : by;
  }

  private Vec apart(Part part, Optional<BuildOrder.Coming> step, Station station) {
    Vec from = part.body().box().centre().minus(box(station).centre()).scale(SPREAD_SHARE);
    Vec along = step.map(s -> s.direction().scale(-SPREAD_WAY)).orElse(Vec.ZERO);
    return from.plus(along).scale(spread);
  }

  /** The box around the station at rest, without its room. */
  public static Box box(Station station) {
    return station.parts().values().stream()
        .filter(p -> !p.isRoom())
        .map(p -> p.body().box())
        .reduce(Box::union)
        .orElse(new Box(new Vec(-500, -500, 0), new Vec(500, 500, 1000)));
  }
}
