package sawstead.station.unit;

import java.util.List;
import java.util.Optional;
import sawstead.solid.Axis;
import sawstead.solid.Body;
import sawstead.solid.Box;
import sawstead.solid.Placement;
import sawstead.solid.Slide;
import sawstead.solid.Solid;
import sawstead.solid.Solids;
import sawstead.solid.Vec;
import sawstead.station.Draft;
import sawstead.station.Mover;
import sawstead.station.Part;
import sawstead.station.PartKind;
import sawstead.station.Setting;

/**
 * A plug or a cuff on its way through a hole, straight along the hole's axis. A plug is a square
 * bar whose section has the plug's diagonal, which is what decides whether it passes a round hole,
 * whichever way it is turned; a cuff is a cylinder.
 *
 * @param id of the guest: {@code ports/cord-plug}
 * @param at a point of the hole's axis
 * @param axis of the hole
 * @param across diagonal or diameter, mm
 * @param square whether it is a plug
 */
record PlugTravel(String id, Vec at, Axis axis, double across, boolean square) {

  /** Length of a plug or a cuff, mm (common practice, no source). */
  private static final double LENGTH = 60;

  /** How far before and behind the panels it starts and ends, mm. */
  private static final double CLEAR = 5;

  /**
   * Adds the motion.
   *
   * @param panels the boxes of the panels that it passes
   * @param aside what hangs in the hole once everything is in place
   */
  void tell(Draft draft, List<Box> panels, List<String> aside) {
    double low = panels.stream().mapToDouble(b -> along(b.low())).min().orElseThrow();
    double high = panels.stream().mapToDouble(b -> along(b.high())).max().orElseThrow();
    double way = high - low + LENGTH + 2 * CLEAR;
    // It enters from the front, the left or above, and goes on away from there.
    boolean down = axis == Axis.Z;
    Vec direction = down ? axis.unit().scale(-1) : axis.unit();
    double middle = down ? high + CLEAR + LENGTH / 2 : low - CLEAR - LENGTH / 2;
    List<String> present = aside.stream().filter(draft::hasBody).toList();
    draft.mover(
        new Mover(
            id + "-passes",
            List.of(),
            new Slide(direction, 0, way, 0),
            List.of(),
            Setting.aside(present).with(List.of(guest(middle)))));
  }

  private double along(Vec point) {
    return switch (axis) {
      case X -> point.x();
      case Y -> point.y();
      case Z -> point.z();
    };
  }

  /** Its axis along the hole, its middle at that coordinate. */
  private Part guest(double middle) {
    double side = across / Math.sqrt(2);
    Solid solid = square ? Solids.box(side, side, LENGTH) : Solids.cylinder(across, LENGTH);
    double half = square ? side / 2 : 0;
    Placement centred = Placement.at(new Vec(-half, -half, -LENGTH / 2));
    Placement turned =
        switch (axis) {
          case X -> centred.turned(Axis.Y, 90);
          case Y -> centred.turned(Axis.X, 90);
          case Z -> centred;
        };
    Vec off = at.minus(axis.unit().scale(along(at))).plus(axis.unit().scale(middle));
    return new Part(PartKind.ENVELOPE, Optional.empty(), 0, new Body(id, solid, turned.moved(off)));
  }
}
