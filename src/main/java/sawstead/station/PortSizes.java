package sawstead.station;

import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.Saw;

/**
 * How wide the holes for hose and plug are: what must pass, plus room, snapped to a hole saw at
 * hand. Lengths mm.
 */
public final class PortSizes {

  /** Added to the widest part that must pass, mm (common practice, no source). */
  static final double PASSING = 4;

  /** Wood left between a port and anything else, mm (common practice, no source). */
  public static final double MARGIN = 10;

  private PortSizes() {}

  /** What the vac's hose needs, cuff first; empty without a vac. */
  public static Optional<Double> hoseNeeds(Brief brief) {
    return brief.vac().map(v -> v.hose().cuff().high() + PASSING);
  }

  /** What the saw's plug needs by its diagonal. */
  public static double plugNeeds(Saw saw) {
    return saw.cord().plug().high() + PASSING;
  }

  /** The smallest hole saw at hand that is at least that wide, if there is one. */
  public static Optional<Double> holeSaw(Brief brief, double least) {
    return brief.workshop().holeSaws().stream().filter(d -> d >= least).min(Double::compare);
  }

  /** The hole's diameter: the hole saw's, or what is needed, rounded up, where a jigsaw must do. */
  public static double hole(Brief brief, double least) {
    return holeSaw(brief, least).orElse(Math.ceil(least));
  }

  /** Depth of the strip behind the saw's body that both ports need, mm. */
  static double strip(Brief brief, Saw saw) {
    double widest = hole(brief, plugNeeds(saw));
    widest = Math.max(widest, hoseNeeds(brief).map(n -> hole(brief, n)).orElse(0.0));
    return widest + 2 * MARGIN + 2;
  }
}
