package sawstead.station;

import java.util.List;
import java.util.stream.Stream;
import sawstead.brief.Saw;

/**
 * Where the saw stands: on a station, or alone on the floor when only jigs are built for it.
 * Lengths mm, station frame.
 *
 * @param saw as measured
 * @param table its table, seen from above
 * @param body its body under the table
 * @param feet height of what its feet stand on
 * @param top height of its table
 * @param taken all of the floor plan that saw and station take up, fence and rails included
 */
public record SawPlace(Saw saw, Area table, Area body, double feet, double top, Area taken) {

  /** Lids that hang at the outfeed's sides open beyond its walls, mm. */
  private static final double OUTFEED = 400;

  /** The saw on its station. */
  public static SawPlace of(Site site) {
    Stream<Area> station =
        Stream.of(
                Stream.of(site.stand()),
                site.left().stream().map(Site.WingPlan::area),
                site.right().stream().map(Site.WingPlan::area),
                site.outfeed().stream()
                    .map(Site.BoxPlan::walls)
                    .map(
                        a ->
                            new Area(a.left() - OUTFEED, a.right() + OUTFEED, a.front(), a.rear())))
            .flatMap(s -> s);
    return new SawPlace(
        site.saw(),
        site.table(),
        site.body(),
        site.levels().sawFeet(),
        site.levels().table(),
        Stream.concat(station, reach(site.saw(), site.table()).stream())
            .reduce(Area::around)
            .orElseThrow());
  }

  /** The saw on the floor. */
  public static SawPlace alone(Saw saw) {
    double left = saw.blade().leftEdge().nominal();
    Area table =
        new Area(-left, saw.table().width().nominal() - left, 0, saw.table().depth().nominal());
    return new SawPlace(
        saw,
        table,
        Area.of(saw.body()),
        0,
        saw.table().height().nominal(),
        reach(saw, table).stream().reduce(Area::around).orElseThrow());
  }

  /** What table, rails and fence reach over. */
  private static List<Area> reach(Saw saw, Area table) {
    double left = saw.fence().left().nominal() + saw.fence().width().nominal();
    double right =
        saw.fence().right().nominal()
            + saw.fence().width().nominal()
            + saw.fence().runOut().nominal();
    for (var rail :
        Stream.of(saw.fence().front(), saw.fence().rear()).flatMap(o -> o.stream()).toList()) {
      left = Math.max(left, rail.left().nominal());
      right = Math.max(right, rail.right().nominal() + saw.fence().runOut().nominal());
    }
    return List.of(table, new Area(-left, right, table.front(), table.rear()));
  }
}
