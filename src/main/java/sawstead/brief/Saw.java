package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * The saw as measured, unplugged, standing level.
 *
 * @param name what the user calls it
 * @param table the table's top
 * @param bottom open or closed underneath
 * @param opening the opening under an open bottom
 * @param body the body under the table, seen from above
 * @param feet what it stands on
 * @param bolts holes in the feet by which it is held down
 * @param boltsMeasured false when the bolt positions are assumed at the feet
 * @param blade the greatest blade it carries
 * @param knife what stands behind the blade to keep the cut open
 * @param slots slots of the table, from left to right
 * @param throat the opening for the insert
 * @param fence the rip fence and its rails
 * @param dust the dust port, if it has one
 * @param behind what stands out behind the table: a motor, a guard's post
 * @param cord its power cord
 * @param switchSpot the on-off switch
 * @param tilt how the blade tilts
 * @param wheel the space that the hand-wheel sweeps
 * @param mass kg
 * @param centre centre of mass
 */
public record Saw(
    String name,
    SawTable table,
    SawBottom bottom,
    Optional<Footing> opening,
    Footing body,
    Feet feet,
    List<BoltHole> bolts,
    boolean boltsMeasured,
    Blade blade,
    Optional<Knife> knife,
    List<MiterSlot> slots,
    Throat throat,
    Fence fence,
    Optional<DustPort> dust,
    List<Protrusion> behind,
    Cord cord,
    SwitchSpot switchSpot,
    Tilt tilt,
    HandWheel wheel,
    Measured mass,
    Spot centre) {
  public Saw {
    requireNonNull(name, "name");
    requireNonNull(table, "table");
    requireNonNull(bottom, "bottom");
    requireNonNull(opening, "opening");
    requireNonNull(body, "body");
    requireNonNull(feet, "feet");
    bolts = List.copyOf(bolts);
    requireNonNull(blade, "blade");
    requireNonNull(knife, "knife");
    slots = List.copyOf(slots);
    requireNonNull(throat, "throat");
    requireNonNull(fence, "fence");
    requireNonNull(dust, "dust");
    behind = List.copyOf(behind);
    requireNonNull(cord, "cord");
    requireNonNull(switchSpot, "switchSpot");
    requireNonNull(tilt, "tilt");
    requireNonNull(wheel, "wheel");
    requireNonNull(mass, "mass");
    requireNonNull(centre, "centre");
  }
}
