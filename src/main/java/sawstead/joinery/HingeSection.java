package sawstead.joinery;

import sawstead.solid.Axis;
import sawstead.solid.Box;
import sawstead.solid.Vec;

/**
 * Where a hinge lies: its pin and the two directions square to it.
 *
 * @param run axis parallel to the pin
 * @param m from a to b
 * @param n the side that the hinge looks to
 * @param pin a point of the pin, mm; its coordinate along {@code run} has no meaning
 * @param level a point on both surfaces that carry leaves: on the plane for OUTSIDE, in the corner
 *     for UNDER_CORNER
 * @param shared stretch of {@code run} that both boards have
 */
record HingeSection(Axis run, Heading m, Heading n, Vec pin, Vec level, Stretch shared) {

  static HingeSection of(HingeJoint hinge, Board a, Board b) {
    if (hinge.mounting() == Mounting.UNDER_CORNER) {
      return underCorner(hinge, a, b);
    }
    Patch patch =
        Patch.across(a, b, HingeJoint.GREATEST_GAP)
            .orElseThrow(
                () ->
                    new JoineryException(
                        "hinge "
                            + hinge.id()
                            + " needs two square boards at most "
                            + HingeJoint.GREATEST_GAP
                            + " mm apart, but "
                            + a.id()
                            + " in "
                            + a.box()
                            + " and "
                            + b.id()
                            + " in "
                            + b.box()
                            + " are not"));
    Heading m = patch.heading();
    Heading n = new Heading(hinge.side(), hinge.towardsPlus());
    if (m.axis() == n.axis()) {
      throw new JoineryException(
          "hinge "
              + hinge.id()
              + " cannot look along "
              + n.axis()
              + ": its boards lie beside each other in that direction");
    }
    Axis run = Heading.third(m.axis(), n.axis());
    Stretch shared =
        new Stretch(patch.rectangle().low().along(run), patch.rectangle().high().along(run));
    double face = m.sideOf(a.box());
    double start = m.opposite().sideOf(b.box());
    return outside(
        hinge, a, b, new HingeSection(run, m, n, Vec.ZERO, Vec.ZERO, shared), face, start);
  }

  /**
   * The board that folds need not stand beside the upright one: its underside may lie at the
   * upright's very top, so that they only meet in a line. What counts is that it begins in front of
   * the upright's face and that both have a stretch of the corner.
   */
  private static HingeSection underCorner(HingeJoint hinge, Board a, Board b) {
    Heading n = new Heading(hinge.side(), hinge.towardsPlus());
    for (Axis axis : Axis.values()) {
      for (boolean plus : new boolean[] {true, false}) {
        Heading m = new Heading(axis, plus);
        if (axis == n.axis() || !beginsBefore(m, a.box(), b.box())) {
          continue;
        }
        Axis run = Heading.third(axis, n.axis());
        double from = Math.max(a.box().low().along(run), b.box().low().along(run));
        double to = Math.min(a.box().high().along(run), b.box().high().along(run));
        if (to - from > Board.SAME) {
          HingeSection bare =
              new HingeSection(run, m, n, Vec.ZERO, Vec.ZERO, new Stretch(from, to));
          return corner(hinge, a, b, bare, m.sideOf(a.box()));
        }
      }
    }
    throw new JoineryException(
        "hinge "
            + hinge.id()
            + " needs a board that begins at most "
            + HingeJoint.GREATEST_GAP
            + " mm in front of the other's face, but "
            + a.id()
            + " lies in "
            + a.box()
            + " and "
            + b.id()
            + " in "
            + b.box());
  }

  private static boolean beginsBefore(Heading m, Box a, Box b) {
    double gap = (m.opposite().sideOf(b) - m.sideOf(a)) * (m.plus() ? 1 : -1);
    return gap >= -Board.SAME && gap <= HingeJoint.GREATEST_GAP + Board.SAME;
  }

  private static HingeSection outside(
      HingeJoint hinge, Board a, Board b, HingeSection bare, double face, double start) {
    double level = bare.n.sideOf(a.box());
    double other = bare.n.sideOf(b.box());
    if (Math.abs(level - other) > Board.SAME) {
      throw new JoineryException(
          "hinge "
              + hinge.id()
              + " needs flush outer sides, but "
              + a.id()
              + " and "
              + b.id()
              + " are off by "
              + Math.abs(level - other)
              + " mm");
    }
    Vec pin = bare.at((face + start) / 2, level);
    return new HingeSection(bare.run, bare.m, bare.n, pin, pin, bare.shared);
  }

  private static HingeSection corner(
      HingeJoint hinge, Board a, Board b, HingeSection bare, double face) {
    double under = bare.n.sideOf(b.box());
    Box upright = a.box();
    double below = (bare.n.sideOf(upright) - under) * (bare.n.plus() ? 1 : -1);
    if (below < hinge.profile().leafWidth()) {
      throw new JoineryException(
          "hinge "
              + hinge.id()
              + " has no room for a leaf on "
              + a.id()
              + ": it reaches "
              + below
              + " mm beyond "
              + b.id());
    }
    Vec level = bare.at(face, under);
    double r = hinge.profile().outerRadius();
    Vec pin = level.plus(bare.m.unit().scale(r)).plus(bare.n.unit().scale(r));
    return new HingeSection(bare.run, bare.m, bare.n, pin, level, bare.shared);
  }

  /** Direction of the pin such that growing angles turn b from M to N, which opens the hinge. */
  HingeLine line() {
    Vec at = Heading.with(pin, run, shared.from());
    return new HingeLine(at, m.unit().cross(n.unit()));
  }

  /**
   * A station box of the section over a stretch of the run.
   *
   * @param from a point of the section, mm
   * @param alongM extent from there along M, may be negative
   * @param alongN extent from there along N, may be negative
   */
  Box box(Vec from, double alongM, double alongN, Stretch stretch) {
    Vec to = from.plus(m.unit().scale(alongM)).plus(n.unit().scale(alongN));
    Vec one = Heading.with(from, run, stretch.from());
    Vec other = Heading.with(to, run, stretch.to());
    return new Box(one, one).union(new Box(other, other));
  }

  private Vec at(double alongM, double alongN) {
    return Heading.with(Heading.with(Vec.ZERO, m.axis(), alongM), n.axis(), alongN);
  }
}
