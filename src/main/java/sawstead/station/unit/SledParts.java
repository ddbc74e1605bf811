package sawstead.station.unit;

import java.util.ArrayList;
import java.util.List;
import sawstead.brief.Sheet;
import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;
import sawstead.station.Area;

/**
 * The blanks of a crosscut sled in its own frame, before kerf and screws.
 *
 * @param blanks in the order in which they go together
 */
record SledParts(List<Blank> blanks) {

  /**
   * A rectangular blank.
   *
   * @param part last word of its id
   * @param sheet that it is cut from
   * @param box that it fills, in the sled's frame
   * @param through axis of its thickness
   * @param towardsPlus whether its front face looks to growing coordinates
   * @param grain axis of its face grain
   */
  record Blank(String part, Sheet sheet, Box box, Axis through, boolean towardsPlus, Axis grain) {

    double mass() {
      Vec size = box.size();
      return size.x() * size.y() * size.z() * 1e-9 * sheet.density().nominal();
    }
  }

  static final String BASE = "base";
  static final String FACE = "fence-face";
  static final String BACKING = "fence-backing";
  static final String BRIDGE = "bridge";
  static final String GUARD_LEFT = "guard-left";
  static final String GUARD_RIGHT = "guard-right";
  static final String GUARD_END = "guard-end";
  static final String GUARD_TOP = "guard-top";
  static final String STOP_ARM = "stop-arm";
  static final String STOP_BLOCK = "stop-block";

  /** How much shorter the backing is than the face, at either end. */
  static final double SHORTER = 60;

  /** A bought track: width and height (REF-TRD-03, common practice). */
  static final double TRACK_WIDTH = 19;

  static final double TRACK_HEIGHT = 9.5;

  /** Arm that stays on the track, and how far it reaches over the base to carry the block. */
  private static final double ARM_HELD = 150;

  private static final double ARM_OVER = 40;

  /** Room for dust under the block. */
  private static final double BLOCK_AIR = 2;

  static SledParts of(SledPlan p) {
    List<Blank> blanks = new ArrayList<>();
    double t = p.base();
    double top = p.top();
    double face = p.face();
    flat(blanks, p, BASE, new Area(-p.left(), p.right(), 0, p.depth()), 0, Axis.X);
    for (SledPlan.Runner r : p.runners()) {
      double half = r.width() / 2;
      double from = p.runnerFrom(r);
      double h = p.runnerHeight();
      blanks.add(
          new Blank(
              r.part(),
              p.runnerSheet(),
              new Area(r.x() - half, r.x() + half, from, p.runnerTo()).between(-h, 0),
              Axis.Z,
              true,
              Axis.Y));
      Area stop =
          new Area(
              r.x() - SledPlan.STOP_WIDTH / 2,
              r.x() + SledPlan.STOP_WIDTH / 2,
              from,
              from + SledPlan.STOP_LENGTH);
      flat(blanks, p, r.part() + "-stop", stop, -h - t, Axis.X);
    }
    upright(blanks, p, FACE, new Area(-p.left(), p.right(), face - t, face), t, top, true);
    Area back = new Area(-p.left() + SHORTER, p.right() - SHORTER, face - 2 * t, face - t);
    upright(blanks, p, BACKING, back, t, top, true);
    guard(blanks, p);
    if (p.wish().bridge()) {
      Area bridge = new Area(-p.left(), p.right(), p.depth() - t, p.depth());
      upright(blanks, p, BRIDGE, bridge, t, top, false);
    }
    if (!p.isSmall()) {
      stop(blanks, p);
    }
    return new SledParts(List.copyOf(blanks));
  }

  private static void guard(List<Blank> blanks, SledPlan p) {
    double t = p.base();
    double in = SledPlan.BESIDE_KERF;
    double rear = p.fenceBack() - 1;
    double under = p.top() - t;
    Area left = new Area(-in - t, -in, SledPlan.EDGE, rear);
    Area right = new Area(in, in + t, SledPlan.EDGE, rear);
    blanks.add(new Blank(GUARD_LEFT, p.sheet(), left.between(t, under), Axis.X, false, Axis.Y));
    blanks.add(new Blank(GUARD_RIGHT, p.sheet(), right.between(t, under), Axis.X, true, Axis.Y));
    Area end = new Area(-in, in, SledPlan.EDGE, SledPlan.EDGE + t);
    upright(blanks, p, GUARD_END, end, t, under, false);
    flat(blanks, p, GUARD_TOP, new Area(-in - t, in + t, SledPlan.EDGE, rear), under, Axis.Y);
  }

  private static void stop(List<Blank> blanks, SledPlan p) {
    double t = p.base();
    double on = p.top() + TRACK_HEIGHT;
    double at = p.stopSign() * p.stopRest();
    double out = at + p.stopSign() * t;
    Area block = across(at, out, p.face(), p.face() + ARM_OVER);
    blanks.add(
        new Blank(
            STOP_BLOCK,
            p.sheet(),
            block.between(t + BLOCK_AIR, on),
            Axis.X,
            p.stopSign() < 0,
            Axis.Z));
    double length = Math.max(p.wish().extension().nominal(), 0) + t + SHORTER + ARM_HELD;
    double end = out - p.stopSign() * Math.min(length, p.left() + p.right() - SHORTER);
    Area arm = across(out, end, p.fenceBack(), p.face() + ARM_OVER);
    flat(blanks, p, STOP_ARM, arm, on, Axis.X);
  }

  private static Area across(double x, double other, double front, double rear) {
    return new Area(Math.min(x, other), Math.max(x, other), front, rear);
  }

  private static void flat(
      List<Blank> blanks, SledPlan p, String part, Area area, double z, Axis grain) {
    blanks.add(new Blank(part, p.sheet(), area.between(z, z + p.base()), Axis.Z, true, grain));
  }

  private static void upright(
      List<Blank> blanks,
      SledPlan p,
      String part,
      Area area,
      double low,
      double high,
      boolean towardsPlus) {
    blanks.add(new Blank(part, p.sheet(), area.between(low, high), Axis.Y, towardsPlus, Axis.X));
  }

  /** Balance point of all blanks along y. */
  double centreY() {
    double mass = 0;
    double moment = 0;
    for (Blank blank : blanks) {
      mass += blank.mass();
      moment += blank.mass() * blank.box().centre().y();
    }
    return moment / mass;
  }
}
