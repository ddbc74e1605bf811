package sawstead.joinery;

import java.util.Objects;
import sawstead.measure.LengthFormat;

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

  /** As one asks for it in a shop: {@code #8 x 1-1/4 in pocket screw}. */
  public String words(LengthFormat lengths) {
    return "#"
        + gauge.number()
        + " x "
        + lengths.near(length)
        + (pocket ? " pocket screw" : " screw");
  }
}
