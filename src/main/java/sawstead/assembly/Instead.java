package sawstead.assembly;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import sawstead.joinery.Board;
import sawstead.joinery.Fastener;
import sawstead.joinery.FastenerKind;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.FreeWay;
import sawstead.solid.Placement;
import sawstead.solid.Solids;
import sawstead.solid.Vec;

/**
 * What else would do where the tools at hand do not reach a fastener at its step.
 *
 * @param otherSide whether an owned tool reaches it from the other side: a screw from the far face
 *     of what it holds, a pocket in the other face of its board
 * @param free room behind its head, along its axis, for something as thick as a bit holder, mm: a
 *     tool that is no longer would do; {@link #UNBOUNDED} where nothing ends it
 * @param others how many other fasteners hold the same parts together
 */
public record Instead(boolean otherSide, double free, int others) {
  /** Room that nothing ends. */
  public static final double UNBOUNDED = Blocking.FAR;

  /** Nothing is known to help, nor needed. */
  static final Instead NOTHING = new Instead(false, 0, 0);

  /** Diameter of a bit holder, mm (common practice, no source). */
  private static final double HOLDER = 10;

  /** How much of the holder is there before it is moved, mm. */
  private static final double FIRST = 1;

  /** Beyond this a screw from the other side would have to be too long to be one, mm. */
  private static final double THROUGH = 60;

  static Instead of(Stage stage, Reach reach, int number, BitSet standing) {
    Fastener fastener = stage.fasteners().get(number);
    boolean turned =
        turned(stage, fastener).filter(f -> reach.isReachable(f, standing)).isPresent();
    int others = -1;
    for (Fastener other : stage.fasteners()) {
      others += other.joins().equals(fastener.joins()) ? 1 : 0;
    }
    return new Instead(turned, free(stage, fastener, standing), others);
  }

  /** The same fastener from the other side, if there is one. */
  static Optional<Fastener> turned(Stage stage, Fastener fastener) {
    if (fastener.kind() == FastenerKind.POCKET_SCREW) {
      return Optional.ofNullable(stage.station().boards().get(fastener.joins().get(0)))
          .map(board -> mirrored(board, fastener));
    }
    if (fastener.kind() != FastenerKind.WOOD_SCREW || fastener.joins().size() != 2) {
      return Optional.empty();
    }
    int[] joins = stage.joins(stage.fasteners().indexOf(fastener));
    double far = 0;
    for (int thing : joins) {
      Box box = stage.thing(thing).box();
      Vec axis = fastener.axis();
      double end =
          Math.max(box.low().x() * axis.x(), box.high().x() * axis.x())
              + Math.max(box.low().y() * axis.y(), box.high().y() * axis.y())
              + Math.max(box.low().z() * axis.z(), box.high().z() * axis.z());
      far = Math.max(far, end - fastener.at().dot(axis));
    }
    return far > THROUGH
        ? Optional.empty()
        : Optional.of(
            moved(
                fastener,
                List.of(fastener.joins().get(1), fastener.joins().get(0)),
                fastener.at().plus(fastener.axis().scale(far)),
                fastener.axis().scale(-1)));
  }

  /** A pocket screw in the other face of its board: mirrored at the middle of its thickness. */
  private static Fastener mirrored(Board board, Fastener fastener) {
    Axis through = board.through();
    double middle = board.box().centre().along(through);
    Vec normal = through.unit();
    Vec at = fastener.at().minus(normal.scale(2 * (fastener.at().along(through) - middle)));
    Vec axis = fastener.axis().minus(normal.scale(2 * fastener.axis().along(through)));
    return moved(fastener, fastener.joins(), at, axis);
  }

  private static Fastener moved(Fastener f, List<String> joins, Vec at, Vec axis) {
    return new Fastener(
        f.id(),
        f.kind(),
        joins,
        at,
        axis,
        f.length(),
        f.diameter(),
        f.pilot(),
        f.headDiameter(),
        f.glued(),
        f.joint());
  }

  private static double free(Stage stage, Fastener fastener, BitSet standing) {
    Vec back = fastener.axis().scale(-1);
    boolean pocket = fastener.kind() == FastenerKind.POCKET_SCREW;
    Body rod = rod(fastener.at(), back);
    double free = Blocking.FAR;
    for (int t = standing.nextSetBit(0); t >= 0; t = standing.nextSetBit(t + 1)) {
      if (t >= stage.things().size()
          || pocket && stage.thing(t).name().equals(fastener.joins().get(0))) {
        continue;
      }
      for (Body body : stage.thing(t).bodies()) {
        free = Math.min(free, FreeWay.of(rod, back, body, 2 * stage.play(), free));
      }
    }
    return Math.min(free + FIRST, Blocking.FAR);
  }

  /** The first stretch of a bit holder behind the head. */
  private static Body rod(Vec head, Vec back) {
    Vec reference = Math.abs(back.x()) < 0.9 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
    Vec u = reference.minus(back.scale(reference.dot(back))).unit();
    return new Body(
        "holder", Solids.cylinder(HOLDER, FIRST), new Placement(u, back.cross(u), back, head));
  }
}
