package sawstead.station;

import sawstead.brief.Brief;
import sawstead.brief.CasterSet;
import sawstead.brief.MobileFrame;
import sawstead.brief.Saw;
import sawstead.brief.StationWish;
import sawstead.brief.Vac;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;

/**
 * The heights of a station, mm above the floor, solved from the height chain: roll + base + leg +
 * top + saw = working height. Either the working height or the leg is given; the other follows;
 * with neither, the leg is as long as the vac needs and the table is not lower than {@link
 * #USUAL_WORKING_HEIGHT}.
 *
 * @param roll underside of the base: loaded height of the casters, what a bought frame adds, or 0
 * @param base thickness of the base
 * @param leg length of the legs as cut
 * @param top thickness of the top
 * @param saw height of the saw's table over its feet
 * @param lowest the lowest of the five measured heights, less what the feet settle
 */
public record Levels(double roll, double base, double leg, double top, double saw, double lowest) {

  /** Height of a table where the user names none: 900 mm, within the bands of REF-ERG-06. */
  public static final double USUAL_WORKING_HEIGHT = 900;

  /** Below this nothing can be reached between base and top, mm. */
  static final double SHORTEST_LEG = 100;

  /**
   * Air between the vac and the stretcher that it passes under, mm (common practice, no source).
   */
  static final double PASSING = 15;

  /**
   * Solves the chain.
   *
   * @throws DesignException when no leg is left, or the leg is longer than any sheet
   */
  public static Levels solve(Brief brief, Saw saw, StationWish wish) {
    double sheet = brief.sheet(wish.sheet()).thickness().nominal();
    double roll = roll(brief, Gauge.nominal());
    double height = saw.table().height().nominal();
    double rest = roll + 2 * sheet + height;
    double leg =
        wish.legLength()
            .map(Measured::nominal)
            .orElseGet(
                () ->
                    wish.workingHeight()
                        .map(w -> w.nominal() - rest)
                        .orElseGet(
                            () -> Math.max(USUAL_WORKING_HEIGHT - rest, needed(brief, wish))));
    demandLeg(brief, wish, leg, rest);
    return new Levels(roll, sheet, leg, sheet, height, lowest(saw, Gauge.nominal()));
  }

  private static double needed(Brief brief, StationWish wish) {
    double vac = brief.vac().map(v -> height(v, Gauge.nominal())).orElse(0.0);
    double lid = brief.vac().map(v -> v.lidRoom().nominal()).orElse(0.0);
    return Math.max(
        2 * wish.stand().stretcher().nominal() + SHORTEST_LEG,
        vac + Math.max(lid, wish.stand().stretcher().nominal() + PASSING));
  }

  private static void demandLeg(Brief brief, StationWish wish, double leg, double rest) {
    double longest = brief.stock().stream().mapToDouble(s -> s.length().nominal()).max().orElse(0);
    LengthFormat words = LengthFormat.of(brief.units());
    String path = wish.legLength().isPresent() ? "station.legs.length" : "station.workingHeight";
    if (leg < SHORTEST_LEG) {
      throw new DesignException(
          path,
          "the legs would be %s long: casters, base, top and saw already stand %s high"
              .formatted(words.near(leg), words.near(rest)),
          "write a working height of at least %s, or lower casters"
              .formatted(words.near(rest + SHORTEST_LEG)));
    }
    if (leg > longest) {
      throw new DesignException(
          path,
          "leg length is %s, longer than any sheet in stock".formatted(words.inWords(leg)),
          "write at most %s, or leave it out and give workingHeight"
              .formatted(words.inWords(longest)));
    }
  }

  /** Height of the base's underside over the floor, mm. */
  public static double roll(Brief brief, Gauge gauge) {
    if (brief.casters() instanceof CasterSet set) {
      return gauge.read(set.height());
    }
    if (brief.casters() instanceof MobileFrame frame) {
      return gauge.read(frame.addedHeight());
    }
    return 0;
  }

  /** The lowest point of the table over the plane of its feet once they have settled, mm. */
  public static double lowest(Saw saw, Gauge gauge) {
    double lowest = saw.table().heights().stream().mapToDouble(gauge::read).min().orElseThrow();
    return lowest - gauge.read(saw.feet().settling());
  }

  /** Height of the vac, lid on, mm. */
  public static double height(Vac vac, Gauge gauge) {
    return vac.tiers().stream().mapToDouble(t -> gauge.read(t.height())).sum();
  }

  /** Top of the base. */
  public double baseTop() {
    return roll + base;
  }

  /** Underside of the top. */
  public double topUnder() {
    return baseTop() + leg;
  }

  /** The plane that the saw's feet stand on. */
  public double sawFeet() {
    return topUnder() + top;
  }

  /** The saw's table, at its nominal height: the working height. */
  public double table() {
    return sawFeet() + saw;
  }

  /** The lowest point of the saw's table, settled. */
  public double lowestTable() {
    return sawFeet() + lowest;
  }
}
