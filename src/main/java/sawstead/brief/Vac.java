package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import sawstead.measure.Measured;

/**
 * The shop vac, lid on, upright.
 *
 * @param name what the user calls it
 * @param tiers from the floor up; one box or stacked cylinders
 * @param lidRoom free height above it to take the lid off, mm
 * @param around air it needs all round, mm
 * @param hose its hose
 * @param mass kg
 */
public record Vac(
    String name, List<Tier> tiers, Measured lidRoom, Measured around, Hose hose, Measured mass) {
  public Vac {
    requireNonNull(name, "name");
    tiers = List.copyOf(tiers);
    requireNonNull(lidRoom, "lidRoom");
    requireNonNull(around, "around");
    requireNonNull(hose, "hose");
    requireNonNull(mass, "mass");
  }
}
