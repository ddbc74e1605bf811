package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import sawstead.measure.Measured;

/**
 * What is to be built. An empty wish is decided by the design, from the saw.
 *
 * @param workingHeight floor to table top, mm; this or `legLength`
 * @param legLength mm; this or `workingHeight`
 * @param sheet name of the sheet for all that names none
 * @param stand the stand
 * @param leftWing left wing
 * @param rightWing right wing
 * @param outfeed outfeed
 * @param ports holes for hose and cord beyond those that the design makes
 * @param pockets which face pockets are in
 * @param contact depth up to which touching is no clash, mm
 */
public record StationWish(
    Optional<Measured> workingHeight,
    Optional<Measured> legLength,
    String sheet,
    StandWish stand,
    Optional<WingWish> leftWing,
    Optional<WingWish> rightWing,
    Optional<OutfeedWish> outfeed,
    List<PortWish> ports,
    PocketSide pockets,
    Measured contact) {
  public StationWish {
    requireNonNull(workingHeight, "workingHeight");
    requireNonNull(legLength, "legLength");
    requireNonNull(sheet, "sheet");
    requireNonNull(stand, "stand");
    requireNonNull(leftWing, "leftWing");
    requireNonNull(rightWing, "rightWing");
    requireNonNull(outfeed, "outfeed");
    ports = List.copyOf(ports);
    requireNonNull(pockets, "pockets");
    requireNonNull(contact, "contact");
  }

  /** The wing at the LEFT or RIGHT. */
  public Optional<WingWish> wing(Side side) {
    return side == Side.LEFT ? leftWing : rightWing;
  }
}
