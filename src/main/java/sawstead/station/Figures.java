package sawstead.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sawstead.measure.Measured;

/**
 * Computes figures with bands by rebuilding: the rule runs once as measured, then once for either
 * end of the band of every measurement that it read. The band is the worst case, the sum of the
 * largest changes (REF-TOL-01).
 */
public final class Figures {
  private Figures() {}

  /** All figures by name. */
  public static Map<String, Figure> of(List<FigureRule> rules, Site site) {
    Map<String, Figure> figures = new TreeMap<>();
    for (FigureRule rule : rules) {
      figures.put(rule.name(), figure(rule, site));
    }
    return figures;
  }

  private static Figure figure(FigureRule rule, Site site) {
    Gauge.Noting noting = new Gauge.Noting();
    List<Term> sum = rule.terms(site, noting);
    double nominal = total(sum);
    double down = 0;
    double up = 0;
    record Share(String path, double width) {}
    List<Share> shares = new ArrayList<>();
    for (Measured measured : noting.seen()) {
      double atLow = total(rule.terms(site, Gauge.with(measured, measured.low()))) - nominal;
      double atHigh = total(rule.terms(site, Gauge.with(measured, measured.high()))) - nominal;
      double below = Math.min(0, Math.min(atLow, atHigh));
      double above = Math.max(0, Math.max(atLow, atHigh));
      down += below;
      up += above;
      if (above - below > 0) {
        shares.add(new Share(measured.path(), above - below));
      }
    }
    shares.sort(Comparator.comparingDouble(Share::width).reversed().thenComparing(Share::path));
    return new Figure(
        rule.name(),
        nominal,
        nominal + down,
        nominal + up,
        sum,
        shares.stream().map(Share::path).toList());
  }

  private static double total(List<Term> sum) {
    return sum.stream().mapToDouble(Term::value).sum();
  }
}
