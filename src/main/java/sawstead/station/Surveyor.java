package sawstead.station;

import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.Mount;
import sawstead.brief.OutfeedWish;
import sawstead.brief.Rail;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.StandWish;
import sawstead.brief.StationWish;
import sawstead.brief.StretcherFit;
import sawstead.brief.Vac;
import sawstead.brief.WingWish;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;

/**
 * Lays out the floor plan and the heights: brief in, {@link Site} out. The order is the one in
 * which a person would decide: heights, the saw, what stands out of it, the outfeed behind that,
 * the stand under both, then the wings at its sides.
 *
 * <p>All clearances here are common practice, no source.
 */
final class Surveyor {

  /** Between the saw's rear rail and the outfeed, mm: the fence's rear hook passes. */
  static final double BEHIND_RAIL = 10;

  /** Between what stands out behind the saw and the outfeed's front wall, mm. */
  static final double BEHIND_PORT = 8;

  /** Between the table's edge and a wing or the stand's side, mm. */
  static final double BESIDE_TABLE = 3;

  /** Between the saw's feet and the stand's edge where nothing else decides, mm. */
  static final double AROUND_FEET = 20;

  /** Depth of an outfeed where the user names none, mm. */
  static final double USUAL_OUTFEED = 350;

  /** Least storage behind the front wall, mm. */
  static final double LEAST_STORAGE = 150;

  /** Width of a wing where the user names none, mm. */
  static final double USUAL_WING = 300;

  /** Top of a wing on either side of a router's plate (common practice, no source). */
  private static final double BESIDE_PLATE = 50;

  /** How far a lid may reach forward of the wall that carries it when the box hangs, mm. */
  static final double LID_REACH = 120;

  /** Air below a rail over a lowered wing, mm. */
  static final double UNDER_RAIL = 5;

  private final Brief brief;
  private final Saw saw;
  private final StationWish wish;

  /** Least width of a lap, mm; that a screw finds room in it is another matter. */
  private static final double LEAST_LAP = 2;

  private final Levels levels;

  private Surveyor(Brief brief, Saw saw, StationWish wish) {
    this.brief = brief;
    this.saw = saw;
    this.wish = wish;
    this.levels = Levels.solve(brief, saw, wish);
  }

  /**
   * The site of a brief that has a saw.
   *
   * @throws DesignException when no station follows from the brief
   */
  static Site survey(Brief brief, Saw saw, StationWish wish) {
    return new Surveyor(brief, saw, wish).site();
  }

  /** A lapped stretcher ends a thickness beside the side strip's edge, and must reach under it. */
  private void demandLap() {
    double sheet = mm(brief.sheet(wish.sheet()).thickness());
    double leg = mm(wish.stand().leg());
    if (wish.stand().fit() == StretcherFit.LAPPED && leg - 2 * sheet < LEAST_LAP) {
      throw new DesignException(
          "station.stand.legs.width",
          "legs %s wide leave a stretcher of %s nothing to be screwed to"
              .formatted(words(leg), words(sheet)),
          "write at least %s, or take a thinner sheet (station.sheet)"
              .formatted(words(2 * sheet + LEAST_LAP)));
    }
  }

  private Site site() {
    demandLap();
    Area table =
        new Area(
            -mm(saw.blade().leftEdge()),
            mm(saw.table().width()) - mm(saw.blade().leftEdge()),
            0,
            mm(saw.table().depth()));
    Area feet = Area.of(saw.feet().outline());
    Area body = Area.of(saw.body());
    double lidFront =
        table.rear() + saw.fence().rear().map(r -> mm(r.out())).orElse(0.0) + BEHIND_RAIL;
    double obstacle = obstacle(table, body);
    Area stand = stand(table, feet, body.rear() + PortSizes.strip(brief, saw), lidFront, obstacle);
    if (!stand.holds(feet)) {
      throw new DesignException(
          "station.stand",
          "the stand (x %s to %s, y %s to %s) is smaller than the saw's feet (x %s to %s, y %s to %s)"
              .formatted(
                  words(stand.left()),
                  words(stand.right()),
                  words(stand.front()),
                  words(stand.rear()),
                  words(feet.left()),
                  words(feet.right()),
                  words(feet.front()),
                  words(feet.rear())),
          "write a width of at least %s and a depth of at least %s, or leave both out"
              .formatted(
                  words(feet.width() + 2 * AROUND_FEET), words(feet.depth() + 2 * AROUND_FEET)));
    }
    Optional<Site.BoxPlan> outfeed = wish.outfeed().map(o -> box(o, stand, lidFront, obstacle));
    return new Site(
        brief,
        saw,
        wish,
        levels,
        table,
        feet,
        body,
        stand,
        outfeed,
        wish.leftWing().map(w -> wing(w, Side.LEFT, table, stand)),
        wish.rightWing().map(w -> wing(w, Side.RIGHT, table, stand)));
  }

  /** The y behind which nothing of the saw stands out at the height of the outfeed's front wall. */
  private double obstacle(Area table, Area body) {
    double y = body.rear();
    if (saw.dust().isPresent() && saw.dust().get().side() == Side.REAR) {
      y = Math.max(y, body.rear() + mm(saw.dust().get().out()));
    }
    y =
        Math.max(
            y, saw.behind().stream().mapToDouble(p -> table.rear() + mm(p.out())).max().orElse(y));
    return Math.max(y + BEHIND_PORT, body.rear() + PortSizes.strip(brief, saw));
  }

  private Area stand(Area table, Area feet, double portsEnd, double lidFront, double obstacle) {
    StandWish stand = wish.stand();
    double usualLeft = Math.max(-table.left() + BESIDE_TABLE, -feet.left() + AROUND_FEET);
    double usualRight = Math.max(table.right() + BESIDE_TABLE, feet.right() + AROUND_FEET);
    double left = stand.left().map(Surveyor::mm).orElse(usualLeft);
    double width =
        stand
            .width()
            .map(Surveyor::mm)
            .orElse(Math.max(left + usualRight, vacNeeds(Vac::around, true)));
    if (stand.left().isEmpty() && stand.width().isPresent()) {
      left = width / 2 - table.centreX();
    }
    double front =
        stand
            .front()
            .map(Surveyor::mm)
            .orElse(Math.min(feet.front(), Math.max(0, feet.front() - 40)));
    double rear =
        front
            + stand
                .depth()
                .map(Surveyor::mm)
                .orElseGet(() -> usualRear(feet, portsEnd, lidFront, obstacle) - front);
    if (rear - front < vacNeeds(Vac::around, false) && stand.depth().isEmpty()) {
      rear = front + vacNeeds(Vac::around, false);
    }
    return new Area(-left, width - left, front, rear);
  }

  private double usualRear(Area feet, double portsEnd, double lidFront, double obstacle) {
    double sheet = brief.sheet(wish.sheet()).thickness().nominal();
    double behindFeet = Math.max(feet.rear() + AROUND_FEET, portsEnd + 2 * sheet);
    return wish.outfeed()
        .map(
            o ->
                o.mount() == Mount.ON_TOP
                    ? lidFront + boxDepth(o, lidFront, obstacle)
                    : Math.max(behindFeet, Math.max(lidFront, obstacle)))
        .orElse(behindFeet);
  }

  private static double boxDepth(OutfeedWish o, double lidFront, double obstacle) {
    return o.depth()
        .map(Surveyor::mm)
        .orElse(Math.max(USUAL_OUTFEED, obstacle - lidFront + USUAL_OUTFEED / 2));
  }

  /**
   * What the vac bay needs of the stand's width (or depth): vac, air, stretchers and legs on both
   * sides.
   */
  private double vacNeeds(java.util.function.Function<Vac, Measured> air, boolean acrossX) {
    return brief
        .vac()
        .map(
            v -> {
              double vac =
                  v.tiers().stream()
                      .mapToDouble(t -> mm(acrossX ? t.width() : t.depth()))
                      .max()
                      .orElse(0);
              double sheet = brief.sheet(wish.sheet()).thickness().nominal();
              return vac + 2 * mm(air.apply(v)) + 6 * sheet;
            })
        .orElse(0.0);
  }

  private Site.BoxPlan box(OutfeedWish o, Area stand, double lidFront, double obstacle) {
    Sheet wall = brief.sheet(o.sheet().orElse(wish.sheet()));
    Sheet lid = brief.sheet(o.lidSheet().orElse(o.sheet().orElse(wish.sheet())));
    double surface = levels.lowestTable() - mm(o.drop());
    double rim = surface - lid.thickness().nominal();
    boolean onTop = o.mount() == Mount.ON_TOP;
    double frontWall = onTop ? Math.max(lidFront, obstacle) : Math.max(stand.rear(), obstacle);
    double front = onTop ? lidFront : Math.max(lidFront, stand.rear() - LID_REACH);
    double rear;
    if (!onTop) {
      rear = stand.rear() + o.depth().map(Surveyor::mm).orElse(USUAL_OUTFEED);
    } else if (o.depth().isPresent()) {
      rear = lidFront + mm(o.depth().get());
    } else {
      rear =
          wish.stand().depth().isPresent()
              ? stand.rear()
              : lidFront + boxDepth(o, lidFront, obstacle);
    }
    double storage = rear - frontWall - 2 * wall.thickness().nominal();
    if (storage < LEAST_STORAGE / 2) {
      throw new DesignException(
          "station.outfeed.depth",
          "the outfeed's box would hold %s: what stands out behind the saw reaches back to y = %s"
              .formatted(words(Math.max(0, storage)), words(obstacle - BEHIND_PORT)),
          "write a depth of at least %s".formatted(words(rear - front + LEAST_STORAGE - storage)));
    }
    Side hinge = o.hinge().orElse(mm(o.overhang()) > 0 ? Side.LEFT : Side.REAR);
    double out = mm(o.hardware().knuckle());
    boolean sideHung = o.lids() == 2 || hinge != Side.REAR;
    double margin = sideHung ? out : 0;
    double left = o.width().map(w -> stand.centreX() - mm(w) / 2).orElse(stand.left() + margin);
    double right = o.width().map(w -> stand.centreX() + mm(w) / 2).orElse(stand.right() - margin);
    double backMargin = !sideHung && onTop && o.depth().isEmpty() ? out : 0;
    double foot =
        onTop ? levels.sawFeet() + mm(o.shim()) : levels.topUnder() - mm(wish.stand().stretcher());
    return new Site.BoxPlan(
        o.mount(),
        new Area(left, right, front, rear - backMargin),
        frontWall,
        foot,
        rim,
        surface,
        mm(o.overhang()),
        hinge,
        wall,
        lid);
  }

  private Site.WingPlan wing(WingWish w, Side side, Area table, Area stand) {
    boolean right = side == Side.RIGHT;
    double inner =
        right
            ? Math.max(stand.right(), table.right() + BESIDE_TABLE)
            : Math.max(-stand.left(), -table.left() + BESIDE_TABLE);
    double outer = inner + w.width().map(Surveyor::mm).orElseGet(() -> usualWing(side));
    double front = w.front().map(Surveyor::mm).orElse(Math.max(BESIDE_TABLE, stand.front()));
    double rear = front + w.depth().map(Surveyor::mm).orElse(table.rear() - BESIDE_TABLE - front);
    Area area = right ? new Area(inner, outer, front, rear) : new Area(-outer, -inner, front, rear);
    double flush =
        levels.lowestTable()
            - w.drop()
                .or(() -> wish.outfeed().map(OutfeedWish::drop))
                .map(Surveyor::mm)
                .orElse(1.5);
    double underRails = underRails(area, table);
    double surface = Math.min(flush, underRails);
    double bottom =
        w.height()
            .map(h -> surface - mm(h))
            .orElse(levels.topUnder() - mm(wish.stand().stretcher()));
    return new Site.WingPlan(
        side, area, bottom, surface, surface < flush, brief.sheet(w.sheet().orElse(wish.sheet())));
  }

  /** As wide as usual, or as the plate of a router in it needs. */
  private double usualWing(Side side) {
    double sheet = brief.sheet(wish.sheet()).thickness().nominal();
    return brief
        .routerTable()
        .filter(r -> r.side() == side)
        .map(r -> mm(r.plate().width()) + 2 * (BESIDE_PLATE + sheet))
        .filter(needs -> needs > USUAL_WING)
        .orElse(USUAL_WING);
  }

  /**
   * The highest a wing's top may be where a rail, at rest or run out, or the clamp passes over it;
   * else +infinity.
   */
  private double underRails(Area wing, Area table) {
    double highest = Double.POSITIVE_INFINITY;
    if (saw.fence().front().isPresent()) {
      Rail rail = saw.fence().front().get();
      double edge = -mm(rail.out());
      if (alongRail(wing, rail)) {
        if (wing.front() < 0) {
          highest =
              Math.min(highest, levels.table() - mm(rail.below()) - mm(rail.height()) - UNDER_RAIL);
        }
        if (wing.front() < edge) {
          highest = Math.min(highest, levels.table() - mm(saw.fence().clampBelow()) - UNDER_RAIL);
        }
      }
    }
    if (saw.fence().rear().isPresent()) {
      Rail rail = saw.fence().rear().get();
      if (alongRail(wing, rail) && wing.rear() > table.rear()) {
        highest =
            Math.min(highest, levels.table() - mm(rail.below()) - mm(rail.height()) - UNDER_RAIL);
      }
    }
    return highest;
  }

  private boolean alongRail(Area wing, Rail rail) {
    return wing.left() < mm(rail.right()) + mm(saw.fence().runOut())
        && -mm(rail.left()) < wing.right();
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }

  private String words(double millimetres) {
    return LengthFormat.of(brief.units()).near(millimetres);
  }
}
