package sawstead.station;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import sawstead.measure.Measured;

/**
 * Reads measured values: as they stand, or with one of them at an end of its band. Every figure's
 * band comes from computing the same figure again through another gauge, never from a second
 * formula.
 */
@FunctionalInterface
public interface Gauge {

  /** The value to compute with: mm, kg or degrees, as the measurement is. */
  double read(Measured measured);

  /** Every value as it stands. */
  static Gauge nominal() {
    return Measured::nominal;
  }

  /** Every value as it stands, but those in the map read as it says. */
  static Gauge with(Map<Measured, Double> shifted) {
    return m -> shifted.getOrDefault(m, m.nominal());
  }

  /** A nominal gauge that notes what was read, to know which measurements a figure rests on. */
  final class Noting implements Gauge {
    private final Set<Measured> seen = new LinkedHashSet<>();

    @Override
    public double read(Measured measured) {
      seen.add(measured);
      return measured.nominal();
    }

    /** What was read so far, in the order of first reading. */
    public Set<Measured> seen() {
      return java.util.Collections.unmodifiableSet(seen);
    }
  }
}
