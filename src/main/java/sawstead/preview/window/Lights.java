package sawstead.preview.window;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sawstead.preview.bench.Named;
import sawstead.preview.scene.Glow;
import sawstead.preview.view.FloorView;
import sawstead.solid.Vec;
import sawstead.station.Part;
import sawstead.station.Station;

/** Which bodies of the floor are lit up, and why. */
final class Lights {
  private final FloorView floor;
  private final Sharing sharing = new Sharing();
  private Map<String, Glow> chosen = Map.of();
  private Map<String, Glow> arriving = Map.of();

  Lights(FloorView floor) {
    this.floor = floor;
  }

  /**
   * Lights what a list of ids names: bodies, motions (what they move), fasteners (what they join).
   */
  void choose(List<String> about, Glow glow, Optional<Station> station) {
    chosen = new TreeMap<>();
    for (String id : about) {
      station.ifPresent(s -> Named.of(id, s).forEach(part -> chosen.put(part, glow)));
    }
    light();
  }

  /** What has just come or met, over what is chosen. */
  void arriving(Map<String, Glow> now) {
    arriving = now;
    light();
  }

  /** Lights all again, as on a station that has changed. */
  void light() {
    if (floor.floor() == null) {
      return;
    }
    Map<String, Glow> all = new TreeMap<>(chosen);
    all.putAll(arriving);
    floor.light(all);
    sharing.draw(all, floor.floor());
  }

  /** The middle of the first body that a list of ids names. */
  static Optional<Vec> middle(List<String> about, Optional<Station> station) {
    return station.flatMap(
        s ->
            about.stream()
                .flatMap(id -> Named.of(id, s).stream())
                .flatMap(id -> s.part(id).stream())
                .map(Part::body)
                .map(b -> b.box().centre())
                .findFirst());
  }
}
