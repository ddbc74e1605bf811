package sawstead.brief;

import static java.util.Objects.requireNonNull;

import sawstead.measure.Measured;

/**
 * A hose.
 *
 * @param diameter outside, mm
 * @param bend least bend radius at the centre line, mm
 * @param length from end to end, mm
 * @param cuff greatest diameter of cuff, ribs or collar, mm
 */
public record Hose(Measured diameter, Measured bend, Measured length, Measured cuff) {
  public Hose {
    requireNonNull(diameter, "diameter");
    requireNonNull(bend, "bend");
    requireNonNull(length, "length");
    requireNonNull(cuff, "cuff");
  }
}
