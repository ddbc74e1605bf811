package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * A hole through one or more panels, in line.
 *
 * @param id short name
 * @param through ids of the panels, in order
 * @param x mm, in the station's frame; ignored along the hole's own axis
 * @param y mm
 * @param z mm
 * @param use what passes
 * @param diameter mm; when absent it follows from the use
 */
public record PortWish(
    String id,
    List<String> through,
    double x,
    double y,
    double z,
    PortUse use,
    Optional<Measured> diameter) {
  public PortWish {
    requireNonNull(id, "id");
    through = List.copyOf(through);
    requireNonNull(use, "use");
    requireNonNull(diameter, "diameter");
  }
}
