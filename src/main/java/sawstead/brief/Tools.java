package sawstead.brief;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * The tools at hand, with the room that each takes up.
 *
 * @param drill with a short bit
 * @param longBit length of the drill's long bit, mm; that of the short one where there is none
 * @param pocketJig for pocket holes
 * @param nailer for brads
 * @param screwdriver worked by hand
 * @param rightAngle a driver whose body stands square to the bit
 * @param wrench with a socket
 * @param clamps by kind
 */
public record Tools(
    DriveTool drill,
    double longBit,
    PocketJig pocketJig,
    DriveTool nailer,
    DriveTool screwdriver,
    DriveTool rightAngle,
    DriveTool wrench,
    List<ClampStock> clamps) {
  public Tools {
    requireNonNull(drill, "drill");
    requireNonNull(pocketJig, "pocketJig");
    requireNonNull(nailer, "nailer");
    requireNonNull(screwdriver, "screwdriver");
    requireNonNull(rightAngle, "rightAngle");
    requireNonNull(wrench, "wrench");
    clamps = List.copyOf(clamps);
  }
}
