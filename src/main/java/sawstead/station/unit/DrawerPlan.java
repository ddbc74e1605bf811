package sawstead.station.unit;

import java.util.List;
import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.Content;
import sawstead.brief.DrawerPlace;
import sawstead.brief.DrawerWish;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.WingWish;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.SawPlace;
import sawstead.station.Site;

/**
 * The sizes of a drawer. Its front lies inside the opening, flush with it; the box behind it hangs
 * on a slide at either side, half of which stays and half of which comes out. Lengths mm.
 *
 * @param wish what is to be built
 * @param sheet of box, front and case
 * @param floorSheet of its floor
 * @param bay the clear space that it runs in
 * @param shell outside of its own case; empty in a wing
 */
record DrawerPlan(
    DrawerWish wish, Sheet sheet, Sheet floorSheet, DrawerBay bay, Optional<Box> shell) {

  /** Air round the front, and under, over and behind the box (common practice, no source). */
  static final double ROUND_FRONT = 2;

  static final double ROUND_BOX = 10;

  /** Free floor behind the saw's table before what stands there by itself. */
  private static final double BEHIND_SLEDS = 400;

  /** A box smaller than this is none. */
  private static final double LEAST = 40;

  /** How high a slide is. */
  static final double SLIDE_HIGH = 45;

  static DrawerPlan of(Brief brief, SawPlace place, Optional<Site> site, int number) {
    DrawerWish wish = brief.drawers().get(number);
    Sheet sheet = brief.sheet(wish.sheet());
    Sheet floor = brief.sheet(wish.floorSheet());
    DrawerPlan plan =
        wish.in() == DrawerPlace.CASE
            ? inCase(brief, place, wish, sheet, floor, number)
            : inWing(brief, site.orElseThrow(), wish, sheet, floor);
    if (wish.in() != DrawerPlace.CASE) {
      plan.refuseOverContents(site.orElseThrow(), number);
      plan.refuseUnderRouter(brief, site.orElseThrow(), number);
    }
    if (plan.width() < LEAST || plan.height() < LEAST / 2 || plan.depth() < LEAST) {
      LengthFormat words = LengthFormat.of(brief.units());
      throw new DesignException(
          "drawers[" + number + "]",
          "its bay (%s wide, %s deep, %s high) leaves no room for a drawer"
              .formatted(
                  words.near(plan.bay.width()),
                  words.near(plan.bay.depth()),
                  words.near(plan.bay.height())),
          "make wing or case larger, or take thinner slides");
    }
    return plan;
  }

  /** Box and front take up all of the cubby's floor. */
  private void refuseOverContents(Site site, int number) {
    List<Content> kept = site.wish().wing(side()).orElseThrow().contents();
    if (!kept.isEmpty()) {
      throw new DesignException(
          "drawers[" + number + "].in",
          "the drawer takes up the %s wing's cubby, in which %s is to be kept"
              .formatted(side().word(), kept.get(0).id()),
          "move the wing's contents into the drawer (drawers[%d].contents), or write `in: case`"
              .formatted(number));
    }
  }

  /** A router hangs from the wing's top; under it there may be room for a low box, or none. */
  private void refuseUnderRouter(Brief brief, Site site, int number) {
    Side side = side();
    if (brief.routerTable().filter(r -> r.side() == side).isEmpty()) {
      return;
    }
    double lowest = RouterPlan.of(brief, site).motorLow();
    double floor = bay.space().low().z();
    if (floor + ROUND_BOX + height() <= lowest) {
      return;
    }
    Side other = side == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    LengthFormat words = LengthFormat.of(brief.units());
    double room = lowest - floor - 2 * ROUND_BOX;
    throw new DesignException(
        "drawers[" + number + "].in",
        "the drawer and the router want the same wing: the router's motor comes down to %s, and the box goes up to %s"
            .formatted(words.near(lowest), words.near(floor + ROUND_BOX + height())),
        "write %s`in: case`, or hang the router in the other wing%s"
            .formatted(
                site.wing(other).isPresent() ? "`in: wing-" + other.word() + "` or " : "",
                room >= LEAST
                    ? ", or make the box low enough to pass under it (`height: "
                        + words.near(Math.floor(room))
                        + "`)"
                    : ""));
  }

  /** The side of its wing; of no meaning in a case. */
  Side side() {
    return side(wish);
  }

  private static Side side(DrawerWish wish) {
    return wish.in() == DrawerPlace.WING_LEFT ? Side.LEFT : Side.RIGHT;
  }

  private static DrawerPlan inWing(
      Brief brief, Site site, DrawerWish wish, Sheet sheet, Sheet floor) {
    Side side = side(wish);
    Site.WingPlan wing = site.wing(side).orElseThrow();
    WingWish wingWish = site.wish().wing(side).orElseThrow();
    double t = wing.sheet().thickness().nominal();
    double low = wing.bottom() + t;
    double high = wing.surface() - t;
    List<DrawerWish> together = brief.drawers().stream().filter(d -> d.in() == wish.in()).toList();
    double each = (high - low) / together.size();
    double from = low + together.indexOf(wish) * each;
    Box space = WingUnit.inside(wing, wingWish).between(from, from + each);
    return new DrawerPlan(
        wish, sheet, floor, new DrawerBay(space, wingWish.opening()), Optional.empty());
  }

  /** Before and beside the station, where an insert would not lie. */
  private static DrawerPlan inCase(
      Brief brief, SawPlace place, DrawerWish wish, Sheet sheet, Sheet floor, int number) {
    double width = wish.caseWidth().nominal();
    double depth = wish.caseDepth().nominal();
    double t = sheet.thickness().nominal();
    double beyond = place.table().rear() + BEHIND_SLEDS + number * (2 * depth + ROUND_BOX);
    Area area = new Beside(brief, place).of(width, beyond, depth, 0);
    Box shell = area.between(0, wish.caseHeight().nominal());
    Box space =
        new Box(
            new Vec(shell.low().x() + t, shell.low().y(), t),
            new Vec(shell.high().x() - t, shell.high().y() - t, shell.high().z() - t));
    return new DrawerPlan(wish, sheet, floor, new DrawerBay(space, Side.FRONT), Optional.of(shell));
  }

  String id(String part) {
    return wish.id() + "/" + part;
  }

  double t() {
    return sheet.thickness().nominal();
  }

  double slide() {
    return wish.slide().nominal();
  }

  /** Width of the box across: what the slides leave, or what is wished. */
  double width() {
    return wish.width().map(Measured::nominal).orElse(bay.width() - 2 * slide());
  }

  /** From the bay's side to the box's. */
  double beside() {
    return (bay.width() - width()) / 2;
  }

  /** Height of the box, its floor included. */
  double height() {
    return wish.height().map(Measured::nominal).orElse(bay.height() - 2 * ROUND_BOX);
  }

  /** Depth of the box behind the front. */
  double depth() {
    return bay.depth() - t() - ROUND_BOX;
  }

  double travel() {
    return wish.travel().map(Measured::nominal).orElse(depth());
  }

  /** Top of the floor, above the bay's. */
  double floorTop() {
    return ROUND_BOX + floorSheet.thickness().nominal();
  }
}
