package sawstead.joinery;

import java.util.Objects;
import sawstead.solid.Feature;

/**
 * A cut that the shank of a fastener runs into.
 *
 * @param board id of the board that has the cut
 * @param feature the cut
 * @param volume of the shank that is in its air, mm3
 * @param depth by which the shank would have to move to be out of it, mm
 */
public record Crossing(String board, Feature feature, double volume, double depth) {
  /** Refuses missing parts. */
  public Crossing {
    Objects.requireNonNull(board, "board");
    Objects.requireNonNull(feature, "feature");
  }
}
