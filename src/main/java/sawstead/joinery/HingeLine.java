package sawstead.joinery;

import java.util.Objects;
import sawstead.solid.Vec;

/**
 * What the second board of a hinge turns about.
 *
 * @param at a point of the pin's axis, station frame, mm
 * @param direction unit, such that growing angles by the right hand open the hinge
 */
public record HingeLine(Vec at, Vec direction) {
  /** Refuses missing parts and makes the direction one long. */
  public HingeLine {
    Objects.requireNonNull(at, "at");
    direction = direction.unit();
  }
}
