package sawstead.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sawstead.solid.Body;
import sawstead.solid.Placement;

/**
 * All bodies as they stand when a mover is about to move, at its motion's rest.
 *
 * <p>A body's place is its rest placement, after the motions of the other movers that the setting
 * names, in the order of their ids; what moves is set after that. So a body stands at {@code set *
 * others * rest}, and one that is not moved at {@code others * rest}.
 *
 * @param moved what moves: bodies of the station, then guests
 * @param standing what does not, without what is put aside
 */
public record Situation(List<Body> moved, List<Body> standing) {
  public Situation {
    moved = List.copyOf(moved);
    standing = List.copyOf(standing);
  }

  /** The bodies of a station for one of its movers. */
  public static Situation of(Station station, Mover mover) {
    List<Body> moved = new ArrayList<>();
    List<Body> standing = new ArrayList<>();
    for (Part part : station.parts().values()) {
      Body body = part.body();
      if (mover.moves().contains(part.id())) {
        moved.add(placed(body, place(station, mover, part.id())));
      } else if (!mover.setting().aside().contains(part.id())) {
        standing.add(placed(body, place(station, mover, part.id())));
      }
    }
    mover.setting().guests().forEach(guest -> moved.add(guest.body()));
    return new Situation(moved, standing);
  }

  /** The motion that takes a body of the station from its rest to where it stands meanwhile. */
  public static Placement place(Station station, Mover mover, String id) {
    Placement by = Placement.identity();
    for (Map.Entry<String, Double> other : mover.setting().others().entrySet()) {
      Mover meant = station.mover(other.getKey()).orElseThrow();
      if (meant.moves().contains(id)) {
        by = meant.motion().at(other.getValue()).after(meant.setting().set()).after(by);
      }
    }
    return mover.moves().contains(id) ? mover.setting().set().after(by) : by;
  }

  /** The very same body where nothing moves it: what is known of it by then is kept. */
  private static Body placed(Body body, Placement by) {
    return by.equals(Placement.identity()) ? body : body.moved(by);
  }
}
