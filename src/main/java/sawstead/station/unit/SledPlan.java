package sawstead.station.unit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sawstead.brief.Brief;
import sawstead.brief.MiterSlot;
import sawstead.brief.OwnedBlade;
import sawstead.brief.Rail;
import sawstead.brief.RunnerChoice;
import sawstead.brief.Saw;
import sawstead.brief.Sheet;
import sawstead.brief.Side;
import sawstead.brief.SledKind;
import sawstead.brief.SledWish;
import sawstead.measure.LengthFormat;
import sawstead.measure.Measured;
import sawstead.station.Area;
import sawstead.station.DesignException;
import sawstead.station.Gauge;
import sawstead.station.SawPlace;

/**
 * The sizes of a crosscut sled, solved from the saw. Its own frame: x from the blade plane, y from
 * its operator's edge away from the operator, z from the saw's table up; standing {@code s} on the
 * table, its edge lies at y = s. Lengths mm. From the operator's edge: exit guard, squaring fence
 * (backing, then face), board, bridge.
 *
 * <p>The blade's half chord at a height h above the table is c(h) (REF-TRD-08). A board as thick as
 * can be, {@code thickest}, is cut through when the chord at its top has passed the fence's face;
 * at the base the blade then reaches c(base top) - c(board top) behind that face. That, less the
 * fence's thickness, plus {@link #BEHIND_BLADE}, is the least inner length of the exit guard.
 *
 * @param brief the brief
 * @param place where the saw stands
 * @param number of the sled in the brief, from 0
 * @param wish what is to be built
 * @param blade on the saw
 * @param sheet of base, fence, guard, bridge and stop
 * @param runnerSheet of the runners
 * @param runners from left to right
 * @param left base to the left of the blade
 * @param right base to the right of the blade
 * @param guard inner length of the exit guard
 * @param widest widest board
 * @param tail base between the widest board and the bridge, whose weight behind the table's front
 *     edge keeps the sled on a short table before a cut
 */
record SledPlan(
    Brief brief,
    SawPlace place,
    int number,
    SledWish wish,
    OwnedBlade blade,
    Sheet sheet,
    Sheet runnerSheet,
    List<Runner> runners,
    double left,
    double right,
    double guard,
    double widest,
    double tail) {

  /**
   * A runner.
   *
   * @param slot number of its slot, from 1
   * @param x its middle
   * @param width as ripped
   * @param guides whether it is the one that guides
   */
  record Runner(int slot, double x, double width, boolean guides) {
    String part() {
      return "runner-" + (x < 0 ? "left" : "right");
    }
  }

  /** Wood over the blade, and behind it in the guard (trade notes, no source). */
  static final double OVER_BLADE = 25;

  static final double BEHIND_BLADE = 25;

  /** Teeth that stand out of the thickest board (common practice, no source). */
  static final double TEETH = 3;

  /** Least inner length of the guard, and wood on either side of the kerf in it (trade notes). */
  static final double LEAST_GUARD = 75;

  static final double BESIDE_KERF = 19;

  /** Base at the operator's edge that stays whole. */
  static final double EDGE = 5;

  /** Base beyond the widest board where there is no bridge. */
  static final double NO_BRIDGE = 10;

  /** Between a board and the blade before a cut. */
  static final double BEFORE_CUT = 5;

  /** The least runner in its slot before the teeth meet the board (trade notes, no source). */
  static final double LEAST_ENGAGED = 150;

  /** What the design adds to that, for measurements that are off. */
  private static final double ENGAGED_SPARE = 10;

  /** The stop below a runner's tail: along the slot, and across it. */
  static final double STOP_LENGTH = 25;

  static final double STOP_WIDTH = 60;

  /** Base beside a runner, and to the side without one. */
  private static final double BESIDE_RUNNER = 60;

  private static final double LEAST_SIDE = 180;
  private static final double USUAL_SIDE = 320;

  /** Base beyond the table's side, which nobody wants (common practice, no source). */
  private static final double WITHIN_TABLE = 5;

  /** Balance point behind the table's front edge at the beginning of a cut, as designed. */
  private static final double BALANCED = 15;

  private static final double NARROWEST = 60;
  private static final double WIDEST = 610;
  private static final double WIDEST_SMALL = 120;
  private static final double NARROWEST_SMALL = 80;

  /** From one sled that is kept beside the station to the next. */
  private static final double NEXT_SLED = 1200;

  /** A sled that cuts no wider boards has a tail, so far as that helps (common practice). */
  private static final double USEFUL = 200;

  private static final double LONGEST_TAIL = 200;

  /**
   * Solves a sled.
   *
   * @throws DesignException when the saw has no slot for it, or its blade cannot reach through it
   */
  static SledPlan of(Brief brief, SawPlace place, int number) {
    SledWish wish = brief.sleds().get(number);
    OwnedBlade blade = brief.mounted().orElseThrow();
    Sheet sheet = brief.sheet(wish.sheet());
    List<Runner> runners = runners(brief, place.saw(), wish, number);
    double left = side(place, wish, runners, Side.LEFT);
    double right = side(place, wish, runners, Side.RIGHT);
    SledPlan first =
        new SledPlan(
            brief,
            place,
            number,
            wish,
            blade,
            sheet,
            brief.sheet(wish.runnerSheet()),
            runners,
            left,
            right,
            0,
            wish.widest().map(Measured::nominal).orElse(WIDEST),
            0);
    if (first.thickest() < 10) {
      LengthFormat words = LengthFormat.of(brief.units());
      throw new DesignException(
          first.path() + ".sheet",
          "the blade stands %s above the table, and a base of %s leaves nothing of it to cut with"
              .formatted(words.near(first.crown()), words.near(first.base())),
          "choose a thinner sheet for the sled");
    }
    SledPlan guarded =
        first.with(
            wish.guardLength().map(Measured::nominal).orElse(first.neededGuard()),
            first.widest(),
            0);
    return wish.widest().isPresent() ? guarded : guarded.balanced();
  }

  private static List<Runner> runners(Brief brief, Saw saw, SledWish wish, int number) {
    List<MiterSlot> slots = saw.slots();
    List<Integer> chosen = new ArrayList<>();
    RunnerChoice choice = wish.runners().orElse(usualRunners(slots, wish));
    for (int i = 0; i < slots.size(); i++) {
      boolean isLeft = slots.get(i).at().nominal() < 0;
      boolean wanted = choice == RunnerChoice.BOTH || isLeft == (choice == RunnerChoice.LEFT);
      if (wanted && chosen.stream().noneMatch(c -> slots.get(c).at().nominal() < 0 == isLeft)) {
        chosen.add(i);
      }
    }
    if (chosen.isEmpty()) {
      throw new DesignException(
          "sleds[" + number + "].runners",
          slots.isEmpty()
              ? "the saw has no slot for a runner"
              : "the saw has no slot on that side of the blade",
          slots.isEmpty()
              ? "write the saw's slots, or remove the sled"
              : "write the other side, or leave `runners` out");
    }
    int guiding =
        chosen.stream()
            .min(Comparator.comparingDouble(i -> Math.abs(slots.get(i).at().nominal())))
            .orElseThrow();
    List<Runner> runners = new ArrayList<>();
    for (int i : chosen) {
      double play = wish.play().nominal() * (i == guiding ? 1 : 2);
      double width =
          wish.runnerWidth().map(Measured::nominal).orElse(slotWidth(brief, saw, i + 1) - play);
      runners.add(new Runner(i + 1, slots.get(i).at().nominal(), width, i == guiding));
    }
    return runners;
  }

  /** A sled for small parts runs in the slot nearest to the blade, others in all. */
  private static RunnerChoice usualRunners(List<MiterSlot> slots, SledWish wish) {
    if (wish.kind() == SledKind.CROSSCUT || slots.isEmpty()) {
      return RunnerChoice.BOTH;
    }
    double nearest =
        slots.stream()
            .mapToDouble(s -> s.at().nominal())
            .boxed()
            .min(Comparator.comparingDouble(Math::abs))
            .orElseThrow();
    return nearest < 0 ? RunnerChoice.LEFT : RunnerChoice.RIGHT;
  }

  /** Width of a slot at its narrowest measured place. */
  private static double slotWidth(Brief brief, Saw saw, int slot) {
    return slotWidths(brief, saw, slot).stream().mapToDouble(Measured::nominal).min().orElseThrow();
  }

  /** Widths of a slot: at three places where they were measured, else the one of the saw. */
  static List<Measured> slotWidths(Brief brief, Saw saw, int slot) {
    return brief
        .alignment()
        .filter(a -> a.widths().size() >= slot)
        .map(a -> a.widths().get(slot - 1))
        .orElse(List.of(saw.slots().get(slot - 1).width()));
  }

  private static double side(SawPlace place, SledWish wish, List<Runner> runners, Side side) {
    int sign = side == Side.LEFT ? -1 : 1;
    boolean small = wish.kind() == SledKind.SMALL_PARTS;
    double runner = runners.stream().mapToDouble(r -> sign * r.x()).max().orElse(0);
    double table = side == Side.LEFT ? -place.table().left() : place.table().right();
    double usual = Math.min(table - WITHIN_TABLE, runner > 0 && !small ? USUAL_SIDE : LEAST_SIDE);
    double clamp =
        small && wish.stopSide() == side ? wish.hands().nominal() + SledClamp.BESIDE_HAND : 0;
    double least = Math.max(clamp, Math.max(runner, 0) + BESIDE_RUNNER);
    return (side == Side.LEFT ? wish.left() : wish.right())
        .map(Measured::nominal)
        .orElse(Math.max(usual, least));
  }

  private SledPlan with(double otherGuard, double otherWidest, double otherTail) {
    return new SledPlan(
        brief,
        place,
        number,
        wish,
        blade,
        sheet,
        runnerSheet,
        runners,
        left,
        right,
        otherGuard,
        otherWidest,
        otherTail);
  }

  /**
   * The widest board at which the sled alone does not yet tip off the table before the cut; with a
   * tail where that would be of little use and a bridge holds the tail together.
   */
  private SledPlan balanced() {
    double least = isSmall() ? NARROWEST_SMALL : NARROWEST;
    SledPlan plan = balanced(isSmall() ? WIDEST_SMALL : WIDEST, least, 0);
    for (double longer = 20;
        !isSmall() && wish.bridge() && plan.widest < USEFUL && longer <= LONGEST_TAIL;
        longer += 20) {
      SledPlan tailed = balanced(USEFUL, plan.widest, longer);
      plan = tailed.widest > plan.widest ? tailed : plan;
    }
    return plan;
  }

  private SledPlan balanced(double most, double least, double longer) {
    for (double w = most; w > least; w -= 5) {
      SledPlan plan = with(guard, w, longer);
      if (SledParts.of(plan).centreY() + plan.from() >= BALANCED) {
        return plan;
      }
    }
    return with(guard, least, longer);
  }

  /** Whether it is for parts too small to hold, with a clamp in place of the stop. */
  boolean isSmall() {
    return wish.kind() == SledKind.SMALL_PARTS;
  }

  String path() {
    return "sleds[" + number + "]";
  }

  String id(String part) {
    return wish.id() + "/" + part;
  }

  Saw saw() {
    return place.saw();
  }

  double base() {
    return sheet.thickness().nominal();
  }

  double runnerHeight() {
    return runnerSheet.thickness().nominal();
  }

  double kerf() {
    return blade.kerf().nominal();
  }

  /** Greatest height of the mounted blade above the table. */
  double crown() {
    return crown(Gauge.nominal());
  }

  double crown(Gauge gauge) {
    return SawUnit.crown(gauge, saw(), blade);
  }

  /** Half the mounted blade's chord at a height above the table. */
  double halfChord(double height) {
    return halfChord(Gauge.nominal(), height);
  }

  double halfChord(Gauge gauge, double height) {
    return SawUnit.halfChord(gauge.read(blade.diameter()) / 2, crown(gauge), height);
  }

  double thickest() {
    return crown() - base() - TEETH;
  }

  /** How far the blade comes out behind the fence's face at the base when a cut ends. */
  double behindFace() {
    return halfChord(base()) - halfChord(base() + thickest());
  }

  double fence() {
    return 2 * base();
  }

  private double neededGuard() {
    double least = behindFace() - fence() + BEHIND_BLADE;
    return Math.max(LEAST_GUARD, 5 * Math.ceil(least / 5));
  }

  /** y at which guard and end plate begin to leave room for the blade. */
  double guardInside() {
    return EDGE + base();
  }

  /** y of the fence's back; the guard ends 1 mm before it, since the fence turns to be squared. */
  double fenceBack() {
    return guardInside() + guard;
  }

  /** y of the fence's face. */
  double face() {
    return fenceBack() + fence();
  }

  /** y of the base's far edge. */
  double depth() {
    return face() + widest + tail + (wish.bridge() ? base() : NO_BRIDGE);
  }

  /** Height of the tops of fence, guard and bridge above the table. */
  double top() {
    return 5 * Math.ceil((crown() + OVER_BLADE) / 5);
  }

  double arbor() {
    return saw().blade().arbor().nominal();
  }

  /** Stand of the sled before a cut of the widest board. */
  double from() {
    return from(Gauge.nominal());
  }

  double from(Gauge gauge) {
    double reached = halfChord(gauge, gauge.read(sheet.thickness()));
    return gauge.read(saw().blade().arbor()) - reached - BEFORE_CUT - face() - widest;
  }

  /** Stand of the sled when the stop ends the cut. */
  double to() {
    return arbor() - face() - halfChord(base() + thickest());
  }

  /** Where a runner's stop meets the saw: the front rail, or the table's edge above it. */
  double stopAt(Runner runner) {
    Optional<Rail> rail = saw().fence().front();
    boolean met =
        rail.isPresent()
            && rail.get().below().nominal() < runnerHeight() + base()
            && runner.x() - STOP_WIDTH / 2 < rail.get().right().nominal()
            && -rail.get().left().nominal() < runner.x() + STOP_WIDTH / 2;
    return met ? -rail.get().out().nominal() : 0;
  }

  /** y of a runner's operator's end, where its stop is. */
  double runnerFrom(Runner runner) {
    return Math.min(0, stopAt(runner) - to() - STOP_LENGTH);
  }

  /** y of a runner's far end: beyond the base where else too little is in the slot before a cut. */
  double runnerTo() {
    return depth() + Math.max(0, LEAST_ENGAGED + ENGAGED_SPARE - depth() - from());
  }

  /** +1 when the stop is on the right, -1 on the left. */
  int stopSign() {
    return wish.stopSide() == Side.LEFT ? -1 : 1;
  }

  /** Base on the stop's side. */
  double stopBase() {
    return wish.stopSide() == Side.LEFT ? left : right;
  }

  /** Where the stop's face is drawn, from the blade. */
  double stopRest() {
    return 0.75 * stopBase();
  }

  /** Farthest place of the stop's face from the blade. */
  double stopFarthest() {
    if (isSmall()) {
      return SledClamp.LONGEST;
    }
    double extension = wish.extension().nominal();
    return extension > 0 ? stopBase() + extension : stopBase() - base();
  }

  /** Where it is kept. */
  Area stored() {
    double further = Math.max(0, wish.extension().nominal()) + number * NEXT_SLED;
    return new Beside(brief, place).of(left + right, 0, depth(), further);
  }
}
