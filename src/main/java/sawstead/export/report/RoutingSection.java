package sawstead.export.report;

import java.io.IOException;
import java.util.List;
import sawstead.station.Routing;
import sawstead.station.Station;

/**
 * {@code routing}: how each relief groove is cut. {@code passes} are depths of the bit; a guide's
 * {@code distance} is from that edge of the panel to the side of the guide that the router's base
 * runs along.
 */
final class RoutingSection {
  private RoutingSection() {}

  static void write(Station station, Json json) throws IOException {
    List<Routing> routings =
        station.site().map(s -> Routing.of(s, station.boards().values())).orElse(List.of());
    json.objects("routing", routings, r -> write(r, json));
  }

  private static void write(Routing routing, Json json) throws IOException {
    json.text("panel", routing.panel());
    json.whole("slot", routing.slot());
    json.number("left", routing.left());
    json.number("right", routing.right());
    json.number("front", routing.front());
    json.number("rear", routing.rear());
    json.number("depth", routing.depth());
    json.number("bit", routing.bit());
    json.list("passes", routing.passes(), json::number);
    json.objects(
        "guides",
        routing.guides(),
        guide -> {
          json.text("edge", guide.edge());
          json.number("distance", guide.distance());
          json.number("middle", guide.middle());
        });
  }
}
