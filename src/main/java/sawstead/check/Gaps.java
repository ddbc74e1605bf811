package sawstead.check;

import java.util.List;
import sawstead.station.Station;

final class Gaps {
  private Gaps() {}

  static List<Gap> of(Station station, double contact) {
    return List.of();
  }
}
