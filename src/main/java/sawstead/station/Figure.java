package sawstead.station;

import java.util.List;

/**
 * A figure with its band: what the finished station measures when every measurement is right, and
 * the least and greatest it can be when each lies anywhere in its band (worst case, REF-TOL-01).
 *
 * @param name key of the report: {@code workingHeight}
 * @param nominal mm
 * @param low mm
 * @param high mm
 * @param sum the terms that add up to {@code nominal}
 * @param rests paths of the measurements that widen the band, the widest first
 */
public record Figure(
    String name, double nominal, double low, double high, List<Term> sum, List<String> rests) {
  public Figure {
    sum = List.copyOf(sum);
    rests = List.copyOf(rests);
  }
}
