package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * The box behind the saw.
 *
 * @param mount on the stand's top or hung behind it
 * @param depth along y, mm
 * @param width along x, mm
 * @param overhang depth of the folding leaf behind the box, mm; 0 for none
 * @param lids 1 or 2
 * @param hinge side of the hinge: REAR, LEFT, RIGHT; with two lids each hangs at its outer side
 * @param drop of its top below the lowest point of the table, mm
 * @param grooveSide clearance of a relief groove at each side, mm
 * @param grooveFloor clearance of a relief groove below bar or washer, mm
 * @param overrun of a relief groove beyond the bar, mm
 * @param chamfer of the leading edge, mm
 * @param hardware the continuous hinge
 * @param contents what is kept in it
 * @param sheet sheet of the walls
 * @param lidSheet sheet of lids and leaf
 * @param joint how its walls are joined
 * @param shim under the box, mm
 */
public record OutfeedWish(
    Mount mount,
    Optional<Measured> depth,
    Optional<Measured> width,
    Measured overhang,
    int lids,
    Optional<Side> hinge,
    Measured drop,
    Measured grooveSide,
    Measured grooveFloor,
    Measured overrun,
    Measured chamfer,
    HingeStock hardware,
    List<Content> contents,
    Optional<String> sheet,
    Optional<String> lidSheet,
    JointKind joint,
    Measured shim) {
  public OutfeedWish {
    requireNonNull(mount, "mount");
    requireNonNull(depth, "depth");
    requireNonNull(width, "width");
    requireNonNull(overhang, "overhang");
    requireNonNull(hinge, "hinge");
    requireNonNull(drop, "drop");
    requireNonNull(grooveSide, "grooveSide");
    requireNonNull(grooveFloor, "grooveFloor");
    requireNonNull(overrun, "overrun");
    requireNonNull(chamfer, "chamfer");
    requireNonNull(hardware, "hardware");
    contents = List.copyOf(contents);
    requireNonNull(sheet, "sheet");
    requireNonNull(lidSheet, "lidSheet");
    requireNonNull(joint, "joint");
    requireNonNull(shim, "shim");
  }
}
