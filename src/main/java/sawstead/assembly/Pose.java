package sawstead.assembly;

import java.util.List;
import java.util.Locale;
import sawstead.solid.Placement;
import sawstead.solid.Turn;
import sawstead.station.Mover;

/**
 * Hinged parts held at an angle while their screws are driven.
 *
 * @param mover what turns
 * @param degrees parameter of its motion; may be outside of its range, as long as nothing is in the
 *     way yet
 */
record Pose(Mover mover, double degrees) {

  /** The angles at which hinged parts are held: at their stop, and some others. */
  static List<Pose> of(Mover mover) {
    if (!(mover.motion() instanceof Turn turn)) {
      return List.of();
    }
    double rest = turn.rest();
    return List.of(
        new Pose(mover, turn.to()),
        new Pose(mover, rest - 90),
        new Pose(mover, rest - 60),
        new Pose(mover, rest - 30),
        new Pose(mover, rest + 90),
        new Pose(mover, rest + 180));
  }

  boolean moves(String part) {
    return mover.moves().contains(part);
  }

  Placement turn() {
    return mover.motion().at(degrees);
  }

  String words() {
    return String.format(Locale.ROOT, "%s at %.0f degrees", mover.id(), degrees);
  }
}
