package sawstead.station.unit;

import java.util.Optional;
import java.util.stream.DoubleStream;
import sawstead.brief.Brief;
import sawstead.brief.Fence;
import sawstead.brief.HandWheel;
import sawstead.brief.PaddleWish;
import sawstead.brief.Rail;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.StopPlace;
import sawstead.brief.SwitchSpot;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.solid.Box;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.SawPlace;
import sawstead.station.Site;

/**
 * The sizes of a knee paddle, solved from the saw's switch, in the station's frame. Lengths mm.
 *
 * <p>The board hangs on an axis along x and swings its lower edge away from the operator. A point
 * that lies d behind the axis and h below it has moved to y = d cos a + h sin a behind the axis
 * after the angle a. The press block's lower far edge comes first: with R = sqrt(d^2 + h^2) it lies
 * d + g farther at a = atan2(h, d) - arccos((d + g) / R), and never when d + g is more than R.
 * Where the stop is pressed, W behind the axis and H below it, R is also sqrt(W^2 + H^2): that
 * gives h.
 *
 * @param brief the brief
 * @param place where the saw stands
 * @param wish what is to be built
 * @param sheet it is cut from
 * @param front y of what the sill lies against: the stand's front, or the bench's
 * @param low z of the sill's lower edge
 * @param axisY y of the axis
 * @param travel how far it swings, degrees
 */
record PaddlePlan(
    Brief brief,
    SawPlace place,
    PaddleWish wish,
    Sheet sheet,
    double front,
    double low,
    double axisY,
    double travel) {

  /** Board above the axis. */
  static final double OVER_AXIS = 20;

  /** Air between board and cheek, a washer thick. */
  static final double WASHER = 1;

  /** How much farther than the stop's stroke the block goes. */
  private static final double SURE = 1;

  /** Greatest swing of a design (common practice, no source). */
  private static final double WIDEST = 22;

  /** Air under what hangs from the table: rail, clamp. */
  private static final double UNDER_RAIL = 8;

  /** Air between the swung board and sill or stand. */
  private static final double AIR = 4;

  /** Least length of a block that a screw holds. */
  private static final double LEAST_PRESS = 25;

  /** Furthest that the axis is set before the stand. */
  private static final double FURTHEST = 300;

  /** Usual lower edge: a knee pushes above it (common practice, no source). */
  private static final double KNEE = 500;

  /** Air between the sill and the switch's plate, and round the hand-wheel. */
  private static final double ROUND_SWITCH = 12;

  private static final double ROUND_WHEEL = 15;

  /** The air round the wheel without which it touches. */
  private static final double BARE = 1;

  /** Board beside a window that is open at the top, where a pivot screw holds. */
  private static final double LEAST_EAR = 25;

  /** Board beside the press block. */
  private static final double BESIDE_PRESS = 10;

  /** Least height of the axis over the stop, and board below the stop. */
  private static final double LEAST_LEVER = 15;

  private static final double LEAST_BELOW = 40;

  /** Least board over the start's window; less breaks out, so the window is open at the top. */
  private static final double OVER_WINDOW = 12;

  /** Room for a finger round the start, away from the stop. */
  private static final double FINGER = 15;

  /** Width of the press block. */
  private static final double PRESS_WIDE = 50;

  /** Solves a paddle; on the floor or a bench where there is no site. */
  static PaddlePlan of(Brief brief, SawPlace place, Optional<Site> site) {
    PaddleWish wish = brief.paddle().orElseThrow();
    Sheet sheet = brief.sheet(wish.sheet());
    double front =
        site.map(s -> s.stand().front())
            .orElse(Math.min(0, Math.min(place.body().front(), feetFront(place))) - 1);
    double low =
        site.map(s -> s.levels().topUnder() - s.wish().stand().stretcher().nominal())
            .orElse(place.feet());
    PaddlePlan plan = new PaddlePlan(brief, place, wish, sheet, front, low, 0, 0);
    plan.demandLever();
    plan.demandRoomBesideWheel();
    double nearest = plan.sillFace() - plan.t() / 2 - AIR;
    for (double back = 0; back <= FURTHEST; back++) {
      plan = plan.at(nearest - back);
      if (plan.hasRoom()) {
        return plan;
      }
    }
    throw new DesignException(
        "paddle",
        "a paddle that swings by %.1f degrees finds no place before the saw's switch"
            .formatted(plan.travel()),
        "write a smaller paddle.travel or a higher paddle.bottom, and measure saw.switch again");
  }

  private void demandLever() {
    LengthFormat words = LengthFormat.of(brief.units());
    double lever = axisZ() - meetsZ();
    if (lever < LEAST_LEVER) {
      throw new DesignException(
          "saw.switch.below",
          "a paddle hung below rail and clamp has its axis %s above the stop's middle, and needs %s"
              .formatted(words.near(lever), words.near(LEAST_LEVER)),
          "measure the switch, the rail and the fence's clamp again; over so high a switch no paddle"
              + " hangs");
    }
    if (bottom() > stopZ() - LEAST_BELOW) {
      throw new DesignException(
          "paddle.bottom",
          "the paddle would end at a height of %s, and the stop lies at %s"
              .formatted(words.near(bottom()), words.near(stopZ())),
          stopZ() > LEAST_BELOW
              ? "write at most %s".formatted(words.near(stopZ() - LEAST_BELOW))
              : "measure saw.switch.below again; before so low a switch no paddle hangs");
    }
  }

  private static double feetFront(SawPlace place) {
    return place.saw().feet().outline().front().nominal();
  }

  private PaddlePlan at(double y) {
    PaddlePlan there = new PaddlePlan(brief, place, wish, sheet, front, low, y, 0);
    double swing =
        wish.travel()
            .map(Measured::nominal)
            .orElseGet(() -> Math.min(WIDEST, there.angleAt(there.into())));
    return new PaddlePlan(brief, place, wish, sheet, front, low, y, swing);
  }

  private boolean hasRoom() {
    double swing = Math.toRadians(travel);
    double down = Math.min(axisZ() - low, axisZ() - bottom());
    double sill = axisY + t() / 2 / Math.cos(swing) + down * Math.tan(swing);
    double reach = axisZ() - bottom();
    double edge = axisY + t() / 2 * Math.cos(swing) + reach * Math.sin(swing);
    return sill <= sillFace() - AIR
        && edge <= (bottom() < low ? front : sillFace()) - AIR
        && usualPress() >= LEAST_PRESS
        && bumperY() <= sillFace() - LEAST_PRESS;
  }

  SwitchSpot spot() {
    return place.saw().switchSpot();
  }

  double t() {
    return sheet.thickness().nominal();
  }

  String id(String part) {
    return "paddle/" + part;
  }

  /** y of the sill's face that looks to the operator. */
  double sillFace() {
    return front - t();
  }

  /** Top of board and cheeks: below everything that hangs from the table's front. */
  double top() {
    Fence fence = place.saw().fence();
    double rail = fence.front().map(PaddlePlan::underside).orElse(0.0);
    double clamp = fence.clampOut().nominal() > 0 ? fence.clampBelow().nominal() : 0;
    double table = place.saw().table().thickness().nominal();
    return place.top() - DoubleStream.of(rail, clamp, table).max().orElseThrow() - UNDER_RAIL;
  }

  private static double underside(Rail rail) {
    return rail.below().nominal() + rail.height().nominal();
  }

  double axisZ() {
    return top() - OVER_AXIS;
  }

  /** z of the board's lower edge. */
  double bottom() {
    if (brief.station().isEmpty()) {
      return place.feet() + wish.bottom().map(Measured::nominal).orElse(AIR);
    }
    boolean vacPasses =
        brief.station().flatMap(s -> s.stand().vacSide()).filter(s -> s == Side.FRONT).isPresent();
    return wish.bottom().map(Measured::nominal).orElse(vacPasses ? Math.max(KNEE, low) : KNEE);
  }

  /** y of the plate, start included. */
  double plateY() {
    return place.body().front() - spot().out().nominal();
  }

  /** y of the stop's face before it is pressed. */
  double stopY() {
    return plateY() - spot().stopOut().nominal();
  }

  /** Middle of the stop: x, z. */
  double stopX() {
    return spot().x().nominal()
        + SawUnit.SWITCH
            / 4
            * (spot().stop() == StopPlace.LEFT ? -1 : spot().stop() == StopPlace.RIGHT ? 1 : 0);
  }

  double stopZ() {
    return plateZ()
        + SawUnit.SWITCH
            / 4
            * (spot().stop() == StopPlace.BELOW ? -1 : spot().stop() == StopPlace.ABOVE ? 1 : 0);
  }

  double plateZ() {
    return place.top() - spot().below().nominal();
  }

  private boolean isBeside() {
    return spot().stop() == StopPlace.LEFT || spot().stop() == StopPlace.RIGHT;
  }

  /** The stop as a body: half of the plate, from the plate outward. */
  Box stop() {
    return half(stopX(), stopZ(), stopY(), plateY());
  }

  /** The start's half of the plate, which lies as far out as the plate. */
  Box start() {
    return half(
        2 * spot().x().nominal() - stopX(), 2 * plateZ() - stopZ(), plateY(), place.body().front());
  }

  private Box half(double x, double z, double from, double to) {
    double halfX = SawUnit.SWITCH / (isBeside() ? 4 : 2);
    double halfZ = SawUnit.SWITCH / (isBeside() ? 2 : 4);
    return new Area(x - halfX, x + halfX, from, to).between(z - halfZ, z + halfZ);
  }

  /** The opening in the board before the start: a finger's room on every side but the stop's. */
  Box window() {
    Box start = start();
    StopPlace stop = spot().stop();
    double high = start.high().z() + (stop == StopPlace.ABOVE ? 0 : FINGER);
    boolean open = high > top() - OVER_WINDOW;
    return new Area(
            start.low().x() - (stop == StopPlace.LEFT ? 0 : FINGER),
            start.high().x() + (stop == StopPlace.RIGHT ? 0 : FINGER),
            axisY - t(),
            axisY + t())
        .between(start.low().z() - (stop == StopPlace.BELOW ? 0 : FINGER), open ? top() + 1 : high);
  }

  /** Wood beside the window for a pivot screw. */
  double ear() {
    Area board = board();
    Box window = window();
    return window.high().z() < axisZ() - OVER_AXIS
        ? board.width() / 2
        : Math.min(window.low().x() - board.left(), board.right() - window.high().x());
  }

  /** Length of the press block: up to the gap before the stop. */
  double press() {
    return wish.press().map(Measured::nominal).orElse(usualPress());
  }

  private double usualPress() {
    return stopY() - wish.gap().nominal() - axisY - t() / 2;
  }

  /** The press block, one sheet thick, standing on the board's back. */
  Box block() {
    double halfX = isBeside() ? t() / 2 : PRESS_WIDE / 2;
    double back = axisY + t() / 2;
    double low = axisZ() - depth();
    return new Area(stopX() - halfX, stopX() + halfX, back, back + press())
        .between(low, low + blockHeight());
  }

  private double blockHeight() {
    return isBeside() ? PRESS_WIDE : t();
  }

  boolean isBlockUpright() {
    return isBeside();
  }

  /** z of the block's lower far edge where the stop is pressed: the block covers its middle. */
  private double meetsZ() {
    double below =
        switch (spot().stop()) {
          case BELOW -> blockHeight() / 2;
          case ABOVE -> 2;
          case LEFT, RIGHT -> blockHeight() / 2 - 4;
        };
    return stopZ() - below;
  }

  private double into() {
    return spot().stroke().nominal() + SURE;
  }

  /** How far the block's lower far edge lies below the axis. */
  double depth() {
    double w = stopY() + into() - axisY;
    double d = w - into() - wish.gap().nominal();
    double h = axisZ() - meetsZ();
    return Math.sqrt(h * h + w * w - d * d);
  }

  /** The angle at which the block has gone so far into the stop, degrees; infinite for never. */
  double angleAt(double into) {
    double d = t() / 2 + press();
    double h = depth();
    double r = Math.hypot(d, h);
    double wanted = stopY() + into - axisY;
    if (wanted > r) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.toDegrees(Math.atan2(h, d) - Math.acos(wanted / r));
  }

  /** The board, from cheek to cheek less the washers. */
  Area board() {
    double[] x = across();
    return new Area(x[0], x[1], axisY - t() / 2, axisY + t() / 2);
  }

  /**
   * From where to where the board reaches along x: with its cheeks clear of a hand-wheel at the
   * front at every tilt, as far as switch and stop allow.
   */
  private double[] across() {
    double middle = spot().x().nominal();
    double left = middle - wish.width().nominal() / 2;
    double right = middle + wish.width().nominal() / 2;
    if (isWheelBefore()) {
      double room = besideWheel(place.saw().tilt().degrees().nominal(), ROUND_WHEEL);
      if (isWheelRight()) {
        right = Math.max(least()[1], Math.min(right, room));
      } else {
        left = Math.min(least()[0], Math.max(left, room));
      }
    }
    return new double[] {left, right};
  }

  /** The least board: round the start's window, at its pivots, behind the press block. */
  private double[] least() {
    Box window = window();
    double beside = window.high().z() < axisZ() - OVER_AXIS ? OVER_WINDOW : LEAST_EAR;
    double half = (isBeside() ? t() : PRESS_WIDE) / 2 + BESIDE_PRESS;
    return new double[] {
      Math.min(window.low().x() - beside, stopX() - half),
      Math.max(window.high().x() + beside, stopX() + half)
    };
  }

  /** Whether a hand-wheel stands out from the front as far as the paddle reaches back. */
  private boolean isWheelBefore() {
    HandWheel wheel = place.saw().wheel();
    return wheel.side() == Side.FRONT && place.body().front() - wheel.out().nominal() < front;
  }

  private boolean isWheelRight() {
    return place.saw().wheel().at().nominal() > spot().x().nominal();
  }

  /** Where the board may end toward the wheel, so that its cheek still has air before it. */
  private double besideWheel(double degrees, double air) {
    double cheek = t() + WASHER;
    double reach =
        new WheelSwing(place.saw(), place.top())
            .reach(degrees, Math.min(low, bottom()), top(), air, isWheelRight());
    return isWheelRight() ? reach - cheek : reach + cheek;
  }

  private void demandRoomBesideWheel() {
    if (!isWheelBefore()) {
      return;
    }
    double middle = spot().x().nominal();
    double has = Math.abs(besideWheel(0, BARE) - middle);
    double needs = Math.abs(least()[isWheelRight() ? 1 : 0] - middle);
    boolean past = isWheelRight() == besideWheel(0, BARE) < middle;
    if (past || has < needs) {
      LengthFormat words = LengthFormat.of(brief.units());
      double cheek = t() + WASHER + BARE;
      throw new DesignException(
          "saw.wheel",
          "between the switch's middle and the hand-wheel there are %s, and half a paddle with its cheek needs %s"
              .formatted(
                  words.near(Math.max(0, (past ? -has : has) + cheek)), words.near(needs + cheek)),
          "measure saw.switch.x, saw.wheel.at and saw.wheel.diameter again; where the wheel is that"
              + " near, leave `paddle` out");
    }
  }

  /** Upper edge of the sill: below the switch, which a hand still reaches, and below the block. */
  double sillTop() {
    double below = Math.min(plateZ() - SawUnit.SWITCH / 2, block().low().z()) - ROUND_SWITCH;
    return place.body().front() > front ? Math.max(place.feet(), below) : place.feet();
  }

  double bumperLow() {
    return sillTop() - t();
  }

  /** y of the bumper's front, which the swung board's back meets at the bumper's lower edge. */
  double bumperY() {
    double swing = Math.toRadians(travel);
    return axisY + t() / 2 / Math.cos(swing) + (axisZ() - bumperLow()) * Math.tan(swing);
  }

  /** y of the cheeks' front edge. */
  double cheekFront() {
    return axisY - t() / 2 - 6;
  }
}
