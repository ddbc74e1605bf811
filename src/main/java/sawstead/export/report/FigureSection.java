package sawstead.export.report;

import java.io.IOException;
import sawstead.station.Figure;
import sawstead.station.Station;

/**
 * {@code figures}: by name, with bands, the sum that each is, and the measurements that widen it.
 */
final class FigureSection {
  private FigureSection() {}

  static void write(Station station, Json json) throws IOException {
    json.openObject("figures");
    for (Figure figure : station.figures().values()) {
      json.openObject(figure.name());
      json.number("nominal", figure.nominal());
      json.number("low", figure.low());
      json.number("high", figure.high());
      json.objects(
          "sum",
          figure.sum(),
          term -> {
            json.text("label", term.label());
            json.number("value", term.value());
          });
      json.texts("rests", figure.rests());
      json.close();
    }
    json.close();
  }
}
