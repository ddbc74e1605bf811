package sawstead.house.flawed.cellar;

import javafx.geometry.Insets;
import org.locationtech.jts.geom.Coordinate;
import org.snakeyaml.engine.v2.api.Load;
import picocli.CommandLine;

/** Part of a house that is wrong on purpose: stands in no room and opens every library. */
final class Box {
  Insets insets;
  Coordinate coordinate;
  Load load;
  CommandLine line;
}
