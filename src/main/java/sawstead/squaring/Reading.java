package sawstead.squaring;

import java.util.List;

/**
 * A length read once or several times with one instrument.
 *
 * @param values what was read, at least one, mm, each more than 0
 * @param band how far the instrument may be off either way, mm: anywhere in it is as likely
 */
public record Reading(List<Double> values, double band) {
  /** Refuses no values, values that are no lengths, and a negative band. */
  public Reading {
    values = List.copyOf(values);
    if (values.isEmpty() || !values.stream().allMatch(v -> v > 0 && Double.isFinite(v))) {
      throw new IllegalArgumentException("a reading is one length or several, each more than 0");
    }
    if (!(band >= 0) || Double.isInfinite(band)) {
      throw new IllegalArgumentException("the band of an instrument is 0 or more, found " + band);
    }
  }

  /** One value. */
  public static Reading of(double value, double band) {
    return new Reading(List.of(value), band);
  }

  /** Mean of the values, mm. */
  public double mean() {
    return values.stream().mapToDouble(v -> v).average().orElseThrow();
  }

  /**
   * Standard uncertainty of the mean, mm: that of the instrument, band / sqrt 3 (REF-TOL-04), and,
   * of several values, the scatter of their mean, s / sqrt n, added as squares (REF-TOL-05). The
   * instrument's part does not shrink with repetition: the same caliper is off the same way.
   */
  public double uncertainty() {
    int n = values.size();
    double mean = mean();
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    double scatter = n < 2 ? 0 : squares / (n - 1) / n;
    return Math.sqrt(scatter + band * band / 3);
  }
}
