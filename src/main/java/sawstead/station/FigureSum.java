package sawstead.station;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A figure as a sum of terms, ready to be computed through any gauge.
 *
 * @param name key of the report
 * @param sum the terms whose sum is the figure, mm: cut sizes stay, measurements go through the
 *     gauge
 */
public record FigureSum(String name, Function<Gauge, List<Term>> sum) {
  public FigureSum {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(sum, "sum");
  }

  List<Term> terms(Gauge gauge) {
    return sum.apply(gauge);
  }
}
