package sawstead.station.unit;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sawstead.brief.Brief;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.StorageWish;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.FigureSum;
import sawstead.station.SawPlace;
import sawstead.station.Site;
import sawstead.station.Term;

/**
 * The sizes of a rack, open to the operator. Its own frame: across from the stand outward, along
 * from its open front to its rear, up from its underside. From the stand: a hanger along the whole
 * stand, a bay for the gauge and, on a shelf above it, the push sticks, then a slot for each blade.
 * Lengths mm.
 *
 * @param wish what is to be built
 * @param sheet it is cut from
 * @param blades that it has slots for
 * @param mounted the blade on the saw, whose slot stays empty
 * @param right whether across grows with x
 * @param stand x of the stand's side
 * @param front y of its front
 * @param low z of its underside
 * @param hanger length of the hanger
 */
record StoragePlan(
    StorageWish wish,
    Sheet sheet,
    List<OwnedBlade> blades,
    Optional<OwnedBlade> mounted,
    boolean right,
    double stand,
    double front,
    double low,
    double hanger) {

  /** Air on either side of a blade's teeth, and round everything else (common practice). */
  static final double BESIDE_BLADE = 2;

  static final double ROUND = 5;

  /** A push stick's grip stands out of the rack (common practice, no source). */
  static final double GRIP = 60;

  /** A blade drawn as a polygon is that much larger at most, so it stands so much off the floor. */
  static final double OFF_FLOOR = 0.05;

  private static final double UNDER_WING = 6;

  /** A shelf lower than this above the floor is none. */
  private static final double LEAST_UNDER = 30;

  /** Free floor behind the saw's table before what stands there by itself, and from one to it. */
  private static final double BEHIND_SLEDS = 400;

  private static final double NEXT = 1500;

  static StoragePlan of(Brief brief, SawPlace place, Optional<Site> site) {
    StorageWish wish = brief.storage().orElseThrow();
    Sheet sheet = brief.sheet(wish.sheet());
    List<OwnedBlade> blades = wish.blades() ? brief.blades() : List.of();
    StoragePlan plan = new StoragePlan(wish, sheet, blades, brief.mounted(), true, 0, 0, 0, 0);
    if (plan.height() - 2 * plan.t() < LEAST_UNDER || plan.depth() - plan.t() < LEAST_UNDER) {
      LengthFormat words = LengthFormat.of(brief.units());
      throw new DesignException(
          "storage",
          "a rack of sheets of %s is nothing when it is %s deep and %s high outside"
              .formatted(words.near(plan.t()), words.near(plan.depth()), words.near(plan.height())),
          "leave depth and height out, or take a thinner sheet");
    }
    if (site.isEmpty()) {
      double y = place.table().rear() + BEHIND_SLEDS + brief.drawers().size() * NEXT;
      Area area = new Beside(brief, place).of(plan.width(), y, plan.depth(), 0);
      return plan.at(true, area.left(), area.front(), 0, plan.depth());
    }
    Site s = site.get();
    Side side = wish.side().orElse(usualSide(s));
    boolean right = side == Side.RIGHT;
    double high = s.wing(side).map(Site.WingPlan::bottom).orElse(s.levels().sawFeet()) - UNDER_WING;
    return plan.at(
        right,
        right ? s.stand().right() : s.stand().left(),
        s.stand().front(),
        high - plan.height(),
        Math.max(plan.depth(), s.stand().depth()));
  }

  private static Side usualSide(Site site) {
    boolean vacRight = site.wish().stand().vacSide().filter(s -> s == Side.RIGHT).isPresent();
    return vacRight ? Side.LEFT : Side.RIGHT;
  }

  private StoragePlan at(boolean toRight, double x, double y, double z, double length) {
    return new StoragePlan(wish, sheet, blades, mounted, toRight, x, y, z, length);
  }

  double t() {
    return sheet.thickness().nominal();
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }

  /** Width of a blade's slot: its teeth and air. */
  double slot(OwnedBlade blade) {
    return mm(blade.kerf()) + 2 * BESIDE_BLADE;
  }

  /** across of the near side of a blade's slot. */
  double slotAt(int number) {
    double at = t() + (wide() > 0 ? wide() + t() : 0);
    for (int i = 0; i < number; i++) {
      at += slot(blades.get(i)) + t();
    }
    return at;
  }

  /** Width of the bay for gauge and push sticks; 0 for none. */
  double wide() {
    double gauge = wish.gauge().map(g -> mm(g.width()) + 2 * ROUND).orElse(0.0);
    double sticks =
        wish.sticks() == 0 ? 0 : wish.sticks() * (mm(wish.stickThickness()) + ROUND) + ROUND;
    return Math.max(gauge, sticks);
  }

  double width() {
    return slotAt(blades.size());
  }

  /** Depth outside; the rear stands inside it. */
  double depth() {
    return wish.depth().map(Measured::nominal).orElse(needsDepth() + t());
  }

  double height() {
    return wish.height().map(Measured::nominal).orElse(needsHeight() + 2 * t());
  }

  /** What lies deepest in it. */
  double needsDepth() {
    return DoubleStream.concat(
            blades.stream().mapToDouble(b -> mm(b.diameter()) + 2 * ROUND),
            Stream.of(
                    wish.gauge().map(g -> mm(g.length()) + ROUND).orElse(0.0),
                    wish.sticks() > 0 ? mm(wish.stickLength()) - GRIP + ROUND : 0)
                .mapToDouble(d -> d))
        .max()
        .orElse(0);
  }

  double needsHeight() {
    double widest = blades.stream().mapToDouble(b -> mm(b.diameter()) + ROUND).max().orElse(0);
    double sticks = wish.sticks() > 0 ? mm(wish.stickHeight()) + ROUND : 0;
    double shelf = wish.sticks() > 0 && wish.gauge().isPresent() ? t() : 0;
    return Math.max(widest, overGauge() + shelf + sticks);
  }

  /** Above the floor's top, what lies over the gauge. */
  private double overGauge() {
    return wish.gauge().map(g -> mm(g.height()) + ROUND).orElse(0.0);
  }

  boolean hasShelf() {
    boolean fits = shelfUnder() + t() <= height() - 2 * t();
    return fits && wish.sticks() > 0 && (wish.gauge().isPresent() || shelfUnder() > LEAST_UNDER);
  }

  /** Underside of the shelf above the floor's top: as high as the sticks on it allow. */
  double shelfUnder() {
    return Math.max(overGauge(), height() - 2 * t() - mm(wish.stickHeight()) - ROUND - t());
  }

  /** Top of what the push sticks lie on, above the floor's top. */
  double sticksOn() {
    return hasShelf() ? shelfUnder() + t() : 0;
  }

  /** A box by its place in the rack. */
  Box box(double across0, double across1, double along0, double along1, double up0, double up1) {
    double x0 = right ? stand + across0 : stand - across1;
    double x1 = right ? stand + across1 : stand - across0;
    return new Box(new Vec(x0, front + along0, low + up0), new Vec(x1, front + along1, low + up1));
  }

  double x(double across) {
    return right ? stand + across : stand - across;
  }

  /** across of the near side of a push stick. */
  double stickAt(int number) {
    return t() + ROUND + number * (mm(wish.stickThickness()) + ROUND);
  }

  /** Middle of the nearest push stick's grip. */
  Vec grip() {
    double across = stickAt(0) + mm(wish.stickThickness()) / 2;
    return new Vec(
        x(across), front - GRIP / 2, low + t() + sticksOn() + mm(wish.stickHeight()) / 2);
  }

  /** How far it is from the middle of the table's front edge, before the blade, to that grip. */
  List<FigureSum> figures(SawPlace place) {
    if (wish.sticks() == 0) {
      return List.of();
    }
    double reach = grip().minus(new Vec(0, place.table().front(), place.top())).length();
    return List.of(
        new FigureSum(
            "pushStickReach",
            g -> List.of(new Term("from the table's front edge to the nearest grip", reach))));
  }
}
