package sawstead.station;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Brief;

/**
 * Units from outside the program: a jar on the class path that names an implementation in {@code
 * META-INF/services/sawstead.station.UnitSource} adds its units to every station, after our own.
 */
public interface UnitSource {

  /**
   * The units that this source adds.
   *
   * @param brief what was measured and wished
   * @param site the solved sizes; empty when the brief has no saw
   */
  List<Unit> units(Brief brief, Optional<Site> site);
}
