package sawstead.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.measure.Measured;

/**
 * Computes figures with bands by rebuilding: the rule runs once as measured, then once for either
 * end of the band of every measurement that it read, which tells which way each one pushes; then
 * with all of them pushed down, and with all pushed up. For figures that rise or fall steadily in
 * every measurement, as sums and least values do, that is the exact worst case (REF-TOL-01);
 * summing the single changes would count five heights of which only the lowest matters five times.
 */
public final class Figures {
  private Figures() {}

  /** All figures by name. */
  public static Map<String, Figure> of(List<FigureRule> rules, Site site) {
    return of(rules.stream().map(rule -> rule.at(site)).toList());
  }

  /** All figures by name. */
  public static Map<String, Figure> of(List<FigureSum> sums) {
    Map<String, Figure> figures = new TreeMap<>();
    for (FigureSum sum : sums) {
      figures.put(sum.name(), figure(sum));
    }
    return figures;
  }

  private static Figure figure(FigureSum rule) {
    Gauge.Noting noting = new Gauge.Noting();
    List<Term> sum = rule.terms(noting);
    double nominal = total(sum);
    Map<Measured, Double> down = new HashMap<>();
    Map<Measured, Double> up = new HashMap<>();
    record Share(String path, double width) {}
    List<Share> shares = new ArrayList<>();
    for (Measured measured : noting.seen()) {
      double atLow = total(rule.terms(Gauge.with(Map.of(measured, measured.low()))));
      double atHigh = total(rule.terms(Gauge.with(Map.of(measured, measured.high()))));
      boolean rises = atHigh >= atLow;
      down.put(measured, rises ? measured.low() : measured.high());
      up.put(measured, rises ? measured.high() : measured.low());
      double width = Math.abs(atHigh - atLow);
      if (width > 0) {
        shares.add(new Share(measured.path(), width));
      }
    }
    shares.sort(Comparator.comparingDouble(Share::width).reversed().thenComparing(Share::path));
    return new Figure(
        rule.name(),
        nominal,
        total(rule.terms(Gauge.with(down))),
        total(rule.terms(Gauge.with(up))),
        sum,
        shares.stream().map(Share::path).toList());
  }

  private static double total(List<Term> sum) {
    return sum.stream().mapToDouble(Term::value).sum();
  }
}
