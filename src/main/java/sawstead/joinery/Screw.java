package sawstead.joinery;

import java.util.Objects;

/**
 * A screw in the drawer.
 *
 * @param gauge its number
 * @param length mm
 * @param pocket true for a washer head, for pocket holes
 */
public record Screw(ScrewGauge gauge, double length, boolean pocket) {
  /** Refuses a length that is none. */
  public Screw {
    Objects.requireNonNull(gauge, "gauge");
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new JoineryException("a screw needs a length of more than 0 mm, found " + length);
    }
  }

  /** Diameter of its head, mm. */
  public double head() {
    return pocket ? gauge.washerHead() : gauge.head();
  }

  @Override
  public String toString() {
    return "#" + gauge.number() + " x " + length + " mm" + (pocket ? " pocket screw" : " screw");
  }
}
