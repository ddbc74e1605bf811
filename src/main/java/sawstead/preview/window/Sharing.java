package sawstead.preview.window;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sawstead.preview.scene.Floor;
import sawstead.preview.scene.Glow;
import sawstead.solid.Body;
import sawstead.solid.Mesh;
import sawstead.solid.Overlap;
import sawstead.solid.Shared;

/** What the bodies that are lit as wrong share, as they now stand. */
final class Sharing {
  /** More than so many bodies at once say no longer who is in whose way. */
  private static final int MOST = 12;

  /** Depth up to which touching is no clash where a brief has no station, mm. */
  private static final double USUAL = 0.05;

  private Floor drawnOn;
  private List<Body> drawnFor = List.of();

  /** Draws it; what was drawn stays as long as the bodies stand as they stood. */
  void draw(Map<String, Glow> lit, Floor floor) {
    List<Body> bodies = wrong(lit, floor);
    if (floor == drawnOn && bodies.equals(drawnFor)) {
      return;
    }
    drawnOn = floor;
    drawnFor = bodies;
    floor.share(among(bodies, floor));
  }

  private static List<Body> wrong(Map<String, Glow> lit, Floor floor) {
    return lit.entrySet().stream()
        .filter(e -> e.getValue() == Glow.STOP)
        .limit(MOST)
        .map(e -> floor.body(e.getKey()))
        .flatMap(Optional::stream)
        .toList();
  }

  private static List<Mesh> among(List<Body> bodies, Floor floor) {
    double tolerance =
        floor.station().brief().station().map(s -> s.contact().nominal()).orElse(USUAL);
    return Overlap.pairs(bodies, tolerance, (a, b) -> false).stream()
        .flatMap(overlap -> Shared.of(overlap).stream())
        .toList();
  }
}
