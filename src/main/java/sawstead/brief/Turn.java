package sawstead.brief;

import static java.util.Objects.requireNonNull;

/**
 * A turn about a fixed axis through the station's origin, by the right hand.
 *
 * @param about the axis
 * @param degrees how far
 */
public record Turn(TurnAxis about, double degrees) {
  public Turn {
    requireNonNull(about, "about");
  }
}
