package sawstead.station.unit;

import java.util.List;
import sawstead.brief.Brief;
import sawstead.brief.Fence;
import sawstead.brief.RouterTable;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.WingWish;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.FigureSum;
import sawstead.station.Gauge;
import sawstead.station.Site;
import sawstead.station.Term;

/**
 * Where a router hangs in a wing: the plate flush in the wing's top, base and motor below it, the
 * bit above it. Lengths mm, station frame.
 *
 * <p>What is left of the top beside the opening are two strips that carry router and work from one
 * upright to the other, each like a beam on two supports with its load in the middle (REF-MEC-01,
 * REF-MEC-02: W L^3 / (48 E I) + W L / (4 G A'), I = b t^3 / 12, A' = 5/6 b t).
 *
 * @param site the station
 * @param wing that it hangs in
 * @param wish what was measured
 */
record RouterPlan(Site site, Site.WingPlan wing, RouterTable wish) {

  /** Gap round the plate. */
  static final double FIT = 0.5;

  /** Least strip of the top beside the plate (common practice, no source). */
  static final double STRIP = 30;

  /** From the plate down to the motor at its highest: collet and spindle. */
  private static final double SPINDLE = 5;

  /** Air round the motor in its base. */
  static final double ROUND_MOTOR = 1;

  /** How much wider than the bit the hole in the plate is, and the notch in the facing. */
  static final double ROUND_BIT = 6;

  /** Air round a motor that hangs through the wing's bottom. */
  private static final double THROUGH = 12;

  /** Work and hands on the plate, N (common practice, no source). */
  static final double PUSH = 100;

  private static final double GRAVITY = 9.80665;

  /** Bending and shear stiffness of plywood, N/mm2 (REF-PLY-11: 6960 to 8550; REF-MEC-02: 400). */
  private static final double BENDING = 7500;

  private static final double SHEAR = 400;

  /** Air under the facing. */
  private static final double UNDER_FACING = 0.5;

  private static final double LONGEST_FACING = 700;

  /** Facing above the fence, to clamp it by. */
  private static final double OVER_FENCE = 20;

  static RouterPlan of(Brief brief, Site site) {
    RouterTable wish = brief.routerTable().orElseThrow();
    RouterPlan plan = new RouterPlan(site, site.wing(wish.side()).orElseThrow(), wish);
    LengthFormat words = LengthFormat.of(brief.units());
    Area top = plan.wing.area();
    Area hole = plan.plate(FIT + 1);
    if (!top.holds(hole)) {
      throw new DesignException(
          "routerTable",
          "the router's plate (x %s to %s, y %s to %s) does not lie in the wing's top (x %s to %s, y %s to %s)"
              .formatted(
                  words.near(hole.left()),
                  words.near(hole.right()),
                  words.near(hole.front()),
                  words.near(hole.rear()),
                  words.near(top.left()),
                  words.near(top.right()),
                  words.near(top.front()),
                  words.near(top.rear())),
          "leave `x` and `y` out, or make the wing larger");
    }
    return plan;
  }

  private static double mm(Measured measured) {
    return measured.nominal();
  }

  boolean isRight() {
    return wish.side() == Side.RIGHT;
  }

  String wingId(String part) {
    return "wing-" + wish.side().word() + "/" + part;
  }

  /** The wing's top between its uprights, seen from above. */
  Area inside() {
    return WingUnit.inside(wing, wingWish());
  }

  WingWish wingWish() {
    return site.wish().wing(wish.side()).orElseThrow();
  }

  /** x of the bit: the middle, or as near to the blade as the fence needs and the plate allows. */
  double x() {
    if (wish.x().isPresent()) {
      return mm(wish.x().get());
    }
    Area inside = inside();
    double reached = farthest() + facingThickness() + mm(wish.bit()) / 2;
    double inner = (isRight() ? inside.left() : -inside.right()) + FIT + STRIP;
    double nearest = inner + mm(wish.plate().width()) / 2;
    double middle = Math.abs(inside.centreX());
    return (isRight() ? 1 : -1) * Math.min(middle, Math.max(nearest, reached));
  }

  double y() {
    return wish.y().map(Measured::nominal).orElse(inside().centreY());
  }

  /** The plate, larger by a margin all round. */
  Area plate(double margin) {
    double halfX = mm(wish.plate().width()) / 2 + margin;
    double halfY = mm(wish.plate().length()) / 2 + margin;
    return new Area(x() - halfX, x() + halfX, y() - halfY, y() + halfY);
  }

  double plateUnder() {
    return wing.surface() - mm(wish.plate().thickness());
  }

  /** Underside of the base. */
  double baseLow() {
    return plateUnder() - mm(wish.body().baseHeight());
  }

  /** Top of the motor at its lowest. */
  double motorTop() {
    return plateUnder() - SPINDLE - mm(wish.body().lift());
  }

  double motorLow() {
    return motorTop() - mm(wish.body().motorLength());
  }

  /** Top of the bit while the motor is at its lowest. */
  double bitTop() {
    return wing.surface() + mm(wish.above()) - mm(wish.body().lift());
  }

  /** Whether the motor hangs through the wing's bottom, and the hole that it needs there. */
  boolean hangsThrough() {
    return motorLow() < wing.bottom() + wing.sheet().thickness().nominal() + THROUGH;
  }

  double throughHole() {
    return mm(wish.body().motor()) + 2 * THROUGH;
  }

  /** How much is missing beside the plate along x and along y, negative where there is room. */
  double[] missing() {
    Area inside = inside();
    Area needs = plate(FIT + STRIP);
    return new double[] {
      Math.max(inside.left() - needs.left(), needs.right() - inside.right()),
      Math.max(inside.front() - needs.front(), needs.rear() - inside.rear())
    };
  }

  /** Whether the strips that carry it run along y, from the front upright to the rear one. */
  private boolean spansDepth() {
    Side open = wingWish().opening();
    return open != Side.FRONT && open != Side.REAR;
  }

  private double span() {
    return spansDepth() ? inside().depth() : inside().width();
  }

  /** Width of both strips together. */
  private double strips() {
    Area hole = plate(FIT);
    return Math.max(
        1, spansDepth() ? inside().width() - hole.width() : inside().depth() - hole.depth());
  }

  private double load() {
    return PUSH + mm(wish.body().mass()) * GRAVITY;
  }

  /** What the strips give way under router and work. */
  List<FigureSum> figures() {
    return List.of(
        new FigureSum(
            "routerSag",
            g -> List.of(new Term("bending", bending(g)), new Term("shear", shear(g)))));
  }

  private double bending(Gauge gauge) {
    double t = gauge.read(wing.sheet().thickness());
    double i = (strips() * t * t * t + 2 * t * Math.pow(ribHeight(), 3)) / 12;
    return load() * Math.pow(span(), 3) / (48 * BENDING * i);
  }

  private double shear(Gauge gauge) {
    double t = gauge.read(wing.sheet().thickness());
    double area = 5.0 / 6 * t * (strips() + 2 * ribHeight());
    return load() * span() / (4 * SHEAR * area);
  }

  /** Height of the ribs; 0 for none, also where the uprights leave them no room. */
  double ribHeight() {
    return ribs().stream().allMatch(inside()::holds) ? mm(wish.rib()) : 0;
  }

  /** The ribs, seen from above: just outside the plate, from upright to upright. */
  List<Area> ribs() {
    Area in = inside();
    Area hole = plate(FIT);
    double t = wing.sheet().thickness().nominal();
    return spansDepth()
        ? List.of(
            new Area(hole.left() - t, hole.left(), in.front(), in.rear()),
            new Area(hole.right(), hole.right() + t, in.front(), in.rear()))
        : List.of(
            new Area(in.left(), in.right(), hole.front() - t, hole.front()),
            new Area(in.left(), in.right(), hole.rear(), hole.rear() + t));
  }

  boolean ribsRunDeep() {
    return spansDepth();
  }

  Sheet facingSheet() {
    return site.brief().sheet(wish.sheet());
  }

  double facingThickness() {
    return facingSheet().thickness().nominal();
  }

  private Fence fence() {
    return site.saw().fence();
  }

  /** Thickness by length by height of the facing. */
  double facingLength() {
    return Math.min(LONGEST_FACING, site.table().depth());
  }

  double facingHeight() {
    return mm(fence().height()) + OVER_FENCE - UNDER_FACING;
  }

  double facingLow() {
    return Math.max(site.levels().table(), wing.surface()) + UNDER_FACING;
  }

  /** y of the facing's end near the operator: so that the bit meets it inside. */
  double facingFront() {
    double front = site.table().front() + (site.table().depth() - facingLength()) / 2;
    double half = facingLength() / 2;
    return Math.min(
        Math.max(front, y() - half - facingLength() / 4), y() - half + facingLength() / 4);
  }

  /** Width and height of the notch round the bit. */
  double notchWidth() {
    return mm(wish.bit()) + 2 * ROUND_BIT;
  }

  double notchHeight() {
    return Math.min(facingHeight() - OVER_FENCE / 2, mm(wish.above()) + ROUND_BIT);
  }

  /** Distance from the blade to the fence's face that looks to the bit, for a place of its body. */
  double farthest() {
    return (isRight() ? mm(fence().right()) : mm(fence().left())) + mm(fence().width());
  }

  /** How far the fence's body may come toward the bit: a shaving beside its greatest bit. */
  double nearestToBit() {
    return Math.abs(x()) - mm(wish.bit()) / 2 - ROUND_MOTOR;
  }
}
