package sawstead.check;

import java.util.List;
import sawstead.station.Station;

final class Passages {
  private Passages() {}

  static List<Passage> of(Station station, double contact) {
    return List.of();
  }
}
