package sawstead.station;

import java.util.List;

/**
 * How a figure is computed from the cut sizes (which stay) and the measurements (which may be off).
 */
public interface FigureRule {

  /** Key of the report. */
  String name();

  /**
   * The terms whose sum is the figure, mm. Cut sizes come from the site, measurements only through
   * the gauge.
   */
  List<Term> terms(Site site, Gauge gauge);

  /** The same rule where the site is known. */
  default FigureSum at(Site site) {
    return new FigureSum(name(), gauge -> terms(site, gauge));
  }
}
