package sawstead.preview.bench;

import java.util.List;
import sawstead.station.Station;

/** Which bodies an id of a finding means. */
public final class Named {
  private Named() {}

  /**
   * The body itself (or a guest of a motion), what a motion moves, what a fastener joins, or all
   * bodies of a unit.
   */
  public static List<String> of(String id, Station station) {
    if (station.parts().containsKey(id)) {
      return List.of(id);
    }
    for (var mover : station.movers()) {
      if (mover.id().equals(id)) {
        return mover.moves();
      }
      if (mover.setting().guests().stream().anyMatch(g -> g.id().equals(id))) {
        return List.of(id);
      }
    }
    for (var fastener : station.fasteners()) {
      if (fastener.id().equals(id)) {
        return fastener.joins();
      }
    }
    return station.parts().keySet().stream().filter(p -> p.startsWith(id + "/")).toList();
  }
}
